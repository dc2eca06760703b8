using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Labels;
using DxAssistant.Knowledge.Readings.Numbers;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>A number or meter word in a message that may be a reading.</summary>
/// <param name="First">Its first token, sign included.</param>
/// <param name="End">The token after its last.</param>
internal sealed record Mention(int First, int End)
{
    /// <summary>The first token of the number itself.</summary>
    public int Number { get; init; } = First;

    public ReadingState State { get; init; } = ReadingState.Number;

    /// <summary>What the number can be, without its sign; empty for a meter word.</summary>
    public ImmutableArray<double> Values { get; init; } = [];

    public NumberManner Manner { get; init; }

    public Sign Sign { get; init; }

    /// <summary>What the unit can be, likeliest first; empty while none is known.</summary>
    public ImmutableArray<Unit> Units { get; init; } = [];

    /// <summary>A unit was said for this number itself.</summary>
    public bool HasOwnUnit { get; init; }

    /// <summary>It was said in degrees of one scale.</summary>
    public bool SaysScale { get; init; }

    public Doubt Doubt { get; init; }

    public LabelMention? Label { get; init; }

    /// <summary>A number that may be a reading or may count something: it only casts doubt on others like it.</summary>
    public bool IsLoose { get; init; }

    public bool IsBare => State == ReadingState.Number && Units.IsEmpty;

    /// <summary>The tokens lie inside this mention.</summary>
    public bool Covers(int token) => token >= First && token < End;
}
