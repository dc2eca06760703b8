using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A fault that no check can see, so that nobody could prove it.</summary>
/// <example>Bad: <c>a fault in no table of likelihoods</c>. Good: <c>| [Plug](…) | never | always |</c>.</example>
internal sealed class UnseenFault : IContentRule
{
    public string Name => "unseen-fault";

    public RuleExample Bad { get; } = new("faults/fan-noisy.md", """
        ---
        kind: fault
        id: ⟦fan-noisy⟧
        frequency: rare
        part: indoor fan motor
        ---
        # Fan noisy
        The bearing is worn.

        ## Said as
        - squeals

        ## Seen
        It squeals.

        ## Measured
        Nothing.

        ## Proof
        Turn it by hand.

        ## Repair
        - [Replace](../repairs/replace-fan-motor.md)

        ## Beware
        Fingers.

        ## Warranty
        A video.
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | never | always |
        | [Motor](../faults/fan-motor-failed.md) | always | never |
        | every other fault | always | never |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        HashSet<Page> seen = [.. pages.OfKind(PageKind.Check).SelectMany(check => SeenBy(check, pages))];
        return pages.OfKind(PageKind.Fault)
            .Where(fault => fault.Id != MissingPage.NoneOfThese && !seen.Contains(fault))
            .Select(fault => fault.Error(Name, fault.IdSpan, $"no check can see the fault `{fault.Id}`",
                "give it a row in the likelihoods of a check of its series that differs from `every other fault`"));
    }

    // A row that another rule reports counts as seeing its fault.
    private static IEnumerable<Page> SeenBy(Page check, Pages pages)
    {
        LikelihoodTable? table = LikelihoodTable.Of(check, pages);
        HashSet<LikelihoodRow> good = [.. table?.GoodRows ?? []];
        LikelihoodRow? other = table?.EveryOther is { } row && good.Contains(row) ? row : null;
        return from line in table?.Rows ?? []
               where line.Fault is not null && SeriesOf.Meet(check, line.Fault)
               where other is null || !good.Contains(line) || !CheckSeparatesNothing.IsSame(line, other)
               select line.Fault;
    }
}
