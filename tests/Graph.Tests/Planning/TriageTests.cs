using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

public class TriageTests
{
    // Two faults alike: a check without error takes away one bit; one that is right three times in four takes away
    // 1 − (0.75 log₂ 4/3 + 0.25 log₂ 4) = 0.189 bits. By hand.
    [Fact]
    public void Next_CheckWithMostBitsAMinute_IsAsked() =>
        Assert.Equal("doubtful", Triage.Next(Problem(
            Parts.Check("sure", 10, 0, ("a", 1)), Parts.Check("doubtful", 1, 0.25, ("a", 0.75))))?.Check.Value);

    [Fact]
    public void Next_CheckThatTellsLittle_IsNotAsked() =>
        Assert.Null(Triage.Next(Problem(Parts.Check("faint", 1, 0.45, ("a", 0.55)))));

    [Fact]
    public void Next_CheckThatTakesTooLong_IsNotAsked() =>
        Assert.Null(Triage.Next(Problem(Parts.Check("slow", 40, 0, ("a", 1)))));

    private static SequencingProblem Problem(params Check[] checks) => new(
        Objective.Isolate, [Parts.Fault("a", 0.5), Parts.Fault("b", 0.5)], checks, [],
        new AccessStates([new AccessState(Parts.Any, Role.Anyone)], [], Parts.Any, null));
}
