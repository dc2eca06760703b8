using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A check with fewer minutes than the way takes to the access state in which it leaves the unit.</summary>
/// <example>Bad: <c>minutes: 3</c> and <c>leaves: isolated-open</c>. Good: <c>minutes: 12</c>.</example>
internal sealed class ShorterThanItsWay : IContentRule
{
    public string Name => "shorter-than-its-way";

    public string Meaning =>
        "A check with fewer minutes than the way takes to the access state in which it leaves the unit.";

    public bool NeedsFrame => true;

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = Example("⟦3⟧");

    public RuleExample Good { get; } = Example("12");

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        AccessMove[] moves = [.. Moves(pages)];
        return
            from check in pages.OfKind(PageKind.Check)
            let minutes = check.Front!.Field("minutes")
            where check.Front!.Field("leaves") is { Values.Length: 1 }
                && Constructs.Number.Read(minutes?.Text ?? "") is { } own && LongestWay(check, moves) > own
            select check.Error(Name, minutes!.Values[0].Span,
                $"the way to `{check.Front!.Field("leaves")!.Text}` alone takes longer",
                "write the minutes of the check with those of the way");
    }

    private static double LongestWay(Page check, AccessMove[] moves)
    {
        AccessId left = new(check.Front!.Field("leaves")!.Values[0].Text);
        AccessId[] done = [.. check.Front!.Field("access")?.Values.Select(state => new AccessId(state.Text)) ?? []];
        AccessId[] states = [.. moves.SelectMany(move => new[] { move.From, move.To }).Distinct()];
        if (!states.Contains(left) || !done.Any(states.Contains)) return 0;
        AccessStates access = new(states.Select(state => new AccessState(state, Role.Anyone)), moves, states[0]);
        return done.Where(states.Contains).Select(state => access.Minutes(state, left)).Where(double.IsFinite)
            .DefaultIfEmpty(0).Max();
    }

    private static IEnumerable<AccessMove> Moves(Pages pages) =>
        from to in pages.OfKind(PageKind.Access)
        from row in to.Section("Ways here")?.Table?.Rows ?? []
        let start = pages.Target(to, row.Cell(0)?.Link, PageKind.Access)
        let minutes = Constructs.Number.Read(row.Cell(1)?.Text ?? "")
        where start is not null && minutes >= 0
        select new AccessMove(new AccessId(start.Id), new AccessId(to.Id), minutes.Value);

    private static RuleExample Example(string minutes) => new("checks/fan-plug.md", $"""
        ---
        kind: check
        id: fan-plug
        minutes: {minutes}
        access: [closed-running]
        leaves: isolated-open
        who: technician
        ---
        """);
}
