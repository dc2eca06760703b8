using System.Collections.Immutable;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>How well a phrase set is matched. Shares from 0 to 1; NaN where the set has nothing of the kind.</summary>
internal sealed record MatchFigures
{
    public MatchFigures(ImmutableArray<MatchLine> lines)
    {
        ImmutableArray<MatchLine> faults = [.. lines.Where(line => line.IsFault)];
        ImmutableArray<MatchLine> idle = [.. lines.Where(line => line.Expected == MatchLine.None)];
        Faults = faults.Length;
        First = Share(faults, line => line.First == line.Expected);
        AmongThree = Share(faults, line => line.Faults.Take(3).Contains(line.Expected));
        PlainFirst = Share(faults, line => line.Plain is [var first, ..] && first == line.Expected);
        PlainAmongThree = Share(faults, line => line.Plain.Take(3).Contains(line.Expected));
        WronglyRefused = Share(faults, line => line.IsRefused);
        RuledOutFirst = faults.Count(line => line.RulesOutFirst);
        Idle = idle.Length;
        FalseFaults = Share(idle, line => !line.Faults.IsEmpty);
        ImmutableArray<MatchLine> dangers = [.. lines.Where(line => line.Expected == MatchLine.Refuse)];
        Dangers = dangers.Length;
        Refused = Share(dangers, line => line.IsRefused);
    }

    public int Faults { get; }

    /// <summary>The fault comes first.</summary>
    public double First { get; }

    public double AmongThree { get; }

    /// <summary>The same of the plain search.</summary>
    public double PlainFirst { get; }

    public double PlainAmongThree { get; }

    /// <summary>The share of the plain search's errors that are gone; negative when there are more.</summary>
    public double ErrorsGone => 1 - ((1 - First) / (1 - PlainFirst));

    public double WronglyRefused { get; }

    /// <summary>How many phrases put first what they rule out.</summary>
    public int RuledOutFirst { get; }

    public int Idle { get; }

    /// <summary>Phrases of no fault for which faults are named all the same.</summary>
    public double FalseFaults { get; }

    public int Dangers { get; }

    public double Refused { get; }

    private static double Share(ImmutableArray<MatchLine> lines, Func<MatchLine, bool> holds) =>
        lines.IsEmpty ? double.NaN : (double)lines.Count(holds) / lines.Length;
}
