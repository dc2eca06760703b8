using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>One thing that may be wrong with content, and how to find it.</summary>
/// <remarks>A rule passes over what another rule reports: one fault, one diagnostic.</remarks>
internal interface IContentRule
{
    /// <summary>The bad thing in kebab-case.</summary>
    string Name { get; }

    /// <summary>
    /// The bad thing in a sentence, for the page of all rules; the summary of the rule says the same.
    /// </summary>
    string Meaning { get; }

    /// <summary>A page that breaks the rule.</summary>
    RuleExample Bad { get; }

    /// <summary>The same page put right.</summary>
    RuleExample Good { get; }

    /// <summary>The other mistakes that are the same to an author.</summary>
    ImmutableArray<ExamplePair> More => [];

    /// <summary>True when a breach is about the front matter or the headings of a page: its frame.</summary>
    bool IsAboutFrame => false;

    /// <summary>True when the rule means little on a page whose frame is bent; it is then left out there.</summary>
    bool NeedsFrame => false;

    /// <summary>True when a breach may depend on any page, picture or translation; false when the rule goes through the
    /// pages one by one and reaches others only by looking them up.</summary>
    bool LooksAtAll => false;

    /// <summary>All breaches, in any order.</summary>
    IEnumerable<Diagnostic> Check(Pages pages);
}
