namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A page that breaks a rule, and the same page put right.</summary>
internal sealed record ExamplePair(RuleExample Bad, RuleExample Good);
