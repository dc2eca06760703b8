using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Makes the fault graph from pages that all rules have passed.</summary>
internal sealed class GraphWriter(Pages pages, Shelf shelf, Func<Page, PageReader> read, KeptParts parts)
{
    private const string Nodes = "nodes";

    private readonly ILookup<string, FaultId> cured =
        parts.Whole("cured", pages.OfKind(PageKind.Fault), () => pages.OfKind(PageKind.Fault)
            .SelectMany(fault => parts.Node(fault, "cures", () => read(fault).Targets("Repair", PageKind.Repair)
                .Select(repair => repair.Path).ToArray())
                .Select(repair => (repair, fault)))
            .ToLookup(pair => pair.repair, pair => new FaultId(pair.fault.Id)));

    public FaultGraph Write() => parts.Graph.Of(new GraphNodes(
        All(PageKind.Fault, Fault, node => node.Id),
        All(PageKind.Symptom, Symptom, node => node.Id),
        All(PageKind.Check, Check, node => node.Id),
        parts.Whole("repairs", [.. pages.OfKind(PageKind.Repair), .. pages.OfKind(PageKind.Fault)], () =>
            pages.OfKind(PageKind.Repair).Select(Repair).ToImmutableSortedDictionary(node => node.Id, node => node)),
        parts.Whole("access", pages.OfKind(PageKind.Access), Access)));

    private ImmutableSortedDictionary<TId, T> All<TId, T>(PageKind kind, Func<Page, T> make, Func<T, TId> id)
        where TId : notnull where T : notnull =>
        parts.Of(Nodes, kind.ToString(), pages.OfKind(kind), page => parts.Node(page, "node", () => make(page)), id,
            null);

    private Fault Fault(Page page)
    {
        string frequency = read(page).Field("frequency")!;
        return new Fault(new FaultId(page.Id),
            pages.Frequencies.TryGetValue(frequency, out double weight) ? weight : Number.Read(frequency)!.Value);
    }

    private Symptom Symptom(Page page) => new(
        new SymptomId(page.Id),
        read(page).Rows("Causes", (row, _) => row).ToImmutableSortedDictionary(
            row => new FaultId(pages.Target(page, row.Cells[0].Link)!.Id),
            row => pages.Likelihood(row.Cells[1].Text)!.Value));

    private Check Check(Page page)
    {
        PageReader reader = read(page);
        LikelihoodTable table = LikelihoodTable.Of(page, pages)!;
        OutcomeId[] heads = [.. table.Outcomes.Select(head => new OutcomeId(head.Text))];
        ImmutableArray<OutcomeId> outcomes = reader.Rows("Outcomes", (row, _) => new OutcomeId(row.Cells[0].Text));
        ImmutableArray<double> InOrder(LikelihoodRow row)
        {
            ImmutableArray<double> scaled = row.Scaled();
            return [.. outcomes.Select(outcome => scaled[Array.IndexOf(heads, outcome)])];
        }

        return new Check(new CheckId(page.Id), reader.Minutes("minutes"), States(reader), Who(reader), outcomes,
            table.Rows.Where(row => !row.IsEveryOther)
                .ToImmutableSortedDictionary(row => new FaultId(row.Fault!.Id), InOrder),
            InOrder(table.EveryOther!))
        {
            Leaves = reader.Field("leaves") is { } state ? new AccessId(state) : null,
        };
    }

    // Which faults it cures is said on their pages.
    private Repair Repair(Page page)
    {
        ImmutableArray<FaultId> fixes = [.. cured[page.Path]];
        Repair kept = parts.Node(page, "node", () => Repair(page, fixes));
        return kept.Fixes.SequenceEqual(fixes) ? kept : parts.Put(page, "node", kept with { Fixes = fixes });
    }

    private Repair Repair(Page page, ImmutableArray<FaultId> fixes)
    {
        PageReader reader = read(page);
        return new Repair(new RepairId(page.Id), reader.Minutes("minutes"), reader.Minutes("verify-minutes"),
            States(reader), Who(reader), fixes)
        {
            WrongMinutes = reader.List("parts").IsEmpty ? 0 : pages.Prices.GetValueOrDefault(Library.PartForNothing),
        };
    }

    private AccessStates Access()
    {
        Page[] states = [.. pages.OfKind(PageKind.Access)];
        AccessId Marked(string field) => new(states.First(page => read(page).Field(field) == "true").Id);
        return new AccessStates(
            states.Select(page => new AccessState(new AccessId(page.Id), Who(read(page)))),
            states.SelectMany(page => read(page).Rows("Ways here", (row, _) => new AccessMove(
                new AccessId(pages.Target(page, row.Cells[0].Link)!.Id), new AccessId(page.Id),
                    Number.Read(row.Cells[1].Text)!.Value))),
            Marked("start"), Marked("verify"));
    }

    private static ImmutableArray<AccessId> States(PageReader page) =>
        [.. page.List("access").Select(id => new AccessId(id))];

    private Role Who(PageReader page) => shelf.Roles[page.List("who")[0]];
}
