using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Conversation.Speaking;

/// <summary>What speaks for one fault and what against it, as sentences, as figures and as a picture.</summary>
internal sealed class FaultLedger
{
    // Natural logarithm of the factor on the odds that is worth a line: one and a half. Common practice, no source.
    private const double Telling = 0.4;

    private readonly TurnDraft turn;
    private readonly FaultPage page;
    private readonly ImmutableArray<(Evidence Evidence, double Weight)> lines;

    /// <param name="fault">One of the candidates of the belief.</param>
    public FaultLedger(TurnDraft turn, FaultId fault)
    {
        this.turn = turn;
        page = turn.Library.Faults[fault];
        lines = [.. turn.View.Belief.Ledger.Select(line => (line.Evidence, line.WeightFor(fault)))];
    }

    /// <summary>How likely the fault was by the complaint alone, 0 to 1; null while nothing else is known.</summary>
    public double? AtFirst() =>
        turn.View.Belief.Ledger.FirstOrDefault(
            line => line.Evidence is not Evidence.SymptomReported)?.Before.GetValueOrDefault(page.Id);

    /// <summary>The weights of all evidence, and the share from which they lead to that of now.</summary>
    public LedgerFigures Figures() => new(
        page.Id.Value, Share(turn.View.Belief.Ledger is [var first, ..] ? first.Before.GetValueOrDefault(page.Id) : 0),
        Share(turn.View.Belief.ProbabilityOf(page.Id)),
        [.. lines.Select(line => Figure(line.Evidence, line.Weight))]);

    private static double Share(double share) => Math.Round(share, 3);

    /// <summary>The results as bars; null when none of them tells much.</summary>
    public Picture? Drawn()
    {
        ImmutableArray<LedgerEntry> entries =
        [
            .. lines.Where(line => line.Evidence is Evidence.OutcomeSeen && IsTelling(line.Weight))
                .Select(line => new LedgerEntry(turn.View.Learnt([line.Evidence]), line.Weight)),
        ];
        return LedgerPicture.Of(page.Title.Text, entries, new SpokenPictures(turn.Speaker)) is { } drawn
            ? SpokenPictures.Shown(drawn, new Provenance.Calculation("belief", turn.Library.Version))
            : null;
    }

    /// <summary>A sentence for each piece of evidence that tells.</summary>
    /// <returns>False when there is none.</returns>
    public bool Say() => Say(lines);

    /// <summary>A sentence for each piece of evidence that tells against it.</summary>
    public void SayAgainst() => Say(lines.Where(line => line.Weight < 0));

    private bool Say(IEnumerable<(Evidence Evidence, double Weight)> told)
    {
        bool said = false;
        foreach ((Evidence evidence, double weight) in told.Where(line => IsTelling(line.Weight)))
            said |= Say(evidence, weight);
        return said;
    }

    // Logarithms may differ in their last bits between systems: rounded before they are compared or shown.
    private static bool IsTelling(double weight) => Math.Round(Math.Abs(weight), 9) >= Telling;

    private bool Say(Evidence evidence, double weight)
    {
        if (What(evidence) is not { } what) return false;
        if (double.IsNegativeInfinity(weight))
            turn.Say(SegmentKind.Why, "ledger-rules-out", what);
        else
            turn.Say(SegmentKind.Why, weight > 0 ? "ledger-for" : "ledger-against", what,
                TimesSlot.Of(Math.Exp(Math.Abs(weight))));
        return true;
    }

    private Slot? What(Evidence evidence) => evidence switch
    {
        Evidence.SymptomReported told => Slot.Of("what", turn.Library.Symptoms[told.Symptom].Title),
        Evidence.OutcomeSeen seen => Result(turn.Library.Checks[seen.Check]),
        Evidence.RepairFailed failed => Made("ledger-tried", failed.Repair),
        Evidence.FaultMended mended => Made("ledger-mended", mended.Repair),
        Evidence.RepairedEarlier earlier => Slot.Of("what", turn.Library.Repairs[earlier.Repair].Title),
        _ => null,
    };

    private Slot Result(CheckPage check)
    {
        string words = turn.State.Results.First(known => known.Check == check.Id.Value).Words;
        return new Slot("what", $"{check.Title.Text}, {words}",
            [Slot.PageOf(check.Title.Place), new Provenance.Person()]);
    }

    private Slot Made(string phrase, RepairId repair)
    {
        Segment made = turn.Speaker.Say(SegmentKind.Why, phrase, Slot.Of("repair", turn.Library.Repairs[repair].Title));
        return new Slot("what", made.Text, made.From);
    }

    private static LedgerFigure Figure(Evidence evidence, double weight)
    {
        (string kind, string id) = evidence switch
        {
            Evidence.SymptomReported told => ("symptom", told.Symptom.Value),
            Evidence.OutcomeSeen seen => ("check", seen.Check.Value),
            Evidence.RepairedEarlier earlier => ("earlier", earlier.Repair.Value),
            Evidence.RepairFailed failed => ("repair", failed.Repair.Value),
            Evidence.FaultMended mended => ("mended", mended.Repair.Value),
            _ => ("repair", ((Evidence.RepairWorked)evidence).Repair.Value),
        };
        return new LedgerFigure(kind, id, double.IsFinite(weight) ? Math.Round(weight, 3) : null);
    }
}
