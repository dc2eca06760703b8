namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>One thing that may be wrong with content, and how to find it.</summary>
/// <remarks>A rule passes over what another rule reports: one fault, one diagnostic.</remarks>
internal interface IContentRule
{
    /// <summary>The bad thing in kebab-case.</summary>
    string Name { get; }

    /// <summary>A page that breaks the rule.</summary>
    RuleExample Bad { get; }

    /// <summary>The same page put right.</summary>
    RuleExample Good { get; }

    /// <summary>All breaches, in any order.</summary>
    IEnumerable<Diagnostic> Check(Pages pages);
}
