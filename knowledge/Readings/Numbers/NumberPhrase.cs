using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Readings.Numbers;

/// <summary>A number found among the tokens, before any unit.</summary>
/// <param name="First">Its first token.</param>
/// <param name="End">The token after its last.</param>
/// <param name="Values">What it can be; empty if it is no number one could take.</param>
/// <param name="Spoken">In what way its values came about.</param>
internal sealed record NumberPhrase(int First, int End, ImmutableArray<double> Values,
    NumberManner Spoken = NumberManner.Digits);
