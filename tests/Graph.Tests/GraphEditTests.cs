using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Tests;

/// <summary>An edited graph is the graph that is built of the edited parts.</summary>
public sealed class GraphEditTests
{
    private static readonly FaultGraph Before = FaultGraph.Build(
        [Parts.Fault("a"), Parts.Fault("b", 2)], [Parts.Symptom("s", ("a", 1), ("b", 0.5))],
        [Parts.Check("c", 3, 0, ("a", 1)), Parts.Check("d", 5, 0.1, ("b", 0.9))],
        [Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 20, "b")],
        AccessStates.OnlyOne);

    public static TheoryData<string, GraphEdit> Edits => new()
    {
        { "nothing", new GraphEdit() },
        { "a likelihood", new GraphEdit { Checks = [Parts.Check("c", 3, 0, ("a", 0.7))] } },
        { "minutes", new GraphEdit
        {
            Repairs = [Parts.Repair("rb", 25, "b")], Checks = [Parts.Check("d", 6, 0.1, ("b", 0.9))],
        } },
        { "what a repair cures", new GraphEdit { Repairs = [Parts.Repair("ra", 10, "b", "a", "a")] } },
        { "a weight", new GraphEdit { Faults = [Parts.Fault("a", 7)] } },
        { "a cause", new GraphEdit { Symptoms = [Parts.Symptom("s", ("b", 0.2))] } },
        { "new parts", new GraphEdit
        {
            Faults = [Parts.Fault("e")], Checks = [Parts.Check("x", 1, 0, ("e", 1))],
            Repairs = [Parts.Repair("re", 1, "e")],
        } },
        { "an unusable fault", new GraphEdit { Faults = [Parts.Fault("a", 0)] } },
        { "an unusable row", new GraphEdit { Checks = [Parts.Check("c", 3, 1.5, ("a", 1))] } },
        { "a fault nobody knows", new GraphEdit { Symptoms = [Parts.Symptom("s", ("z", 1))] } },
        { "a part twice", new GraphEdit { Faults = [Parts.Fault("a", 3), Parts.Fault("a", 4)] } },
    };

    [Theory]
    [MemberData(nameof(Edits))]
    public void With_SomeParts_IsTheGraphBuiltOfThem(string what, GraphEdit edit) =>
        AssertSame(Whole(edit), Before.With(edit), what);

    // What was found once is found again: nothing is taken over from a graph that was not sound.
    [Theory]
    [MemberData(nameof(Edits))]
    public void With_PartsMended_IsSound(string what, GraphEdit edit)
    {
        FaultGraph back = Before.With(edit).With(new GraphEdit
        {
            Faults = Before.Faults, Symptoms = Before.Symptoms, Checks = Before.Checks, Repairs = Before.Repairs,
        });
        Assert.Equal(what == "new parts" ? 3 : 2, back.Faults.Length);
        Assert.Equal(what == "new parts", back.Findings.Length > 0);
    }

    private static FaultGraph Whole(GraphEdit edit) => FaultGraph.Build(
        Before.Faults.ExceptBy(edit.Faults.Select(part => part.Id), part => part.Id).Concat(edit.Faults),
        Before.Symptoms.ExceptBy(edit.Symptoms.Select(part => part.Id), part => part.Id).Concat(edit.Symptoms),
        Before.Checks.ExceptBy(edit.Checks.Select(part => part.Id), part => part.Id).Concat(edit.Checks),
        Before.Repairs.ExceptBy(edit.Repairs.Select(part => part.Id), part => part.Id)
            .Concat(edit.Repairs), AccessStates.OnlyOne);

    private static void AssertSame(FaultGraph expected, FaultGraph edited, string what)
    {
        Assert.Equal(Text(expected), Text(edited));
        foreach (Check check in edited.Checks)
            foreach (Fault fault in edited.Faults)
                Assert.True(check.Row(fault.Id).AsSpan().SequenceEqual(
                    edited.Likelihoods.Row(edited.Likelihoods.PlaceOf(check.Id), edited.Likelihoods.PlaceOf(fault.Id))),
                    what);
    }

    private static string Text(FaultGraph graph) => string.Join('\n',
    [
        .. graph.Faults.Select(part => part.ToString()), .. graph.Links.Select(link => link.ToString()),
        .. graph.Findings.Select(each => each.ToString()),
        .. graph.Checks.Select(part => $"{part.Id} {part.Minutes}"),
        .. graph.Repairs.Select(part => $"{part.Id} {part.Minutes} {string.Join(' ', part.Fixes)}"),
    ]);
}
