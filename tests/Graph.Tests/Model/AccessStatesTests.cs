using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Tests.Model;

public sealed class AccessStatesTests
{
    private static readonly Role Technician = new("technician", 2);
    private static readonly AccessId A = new("a");
    private static readonly AccessId B = new("b");
    private static readonly AccessId C = new("c");

    [Fact]
    public void Minutes_DetourIsShorter_TakesTheDetour()
    {
        AccessStates access = Three(new(A, C, 20), new(A, B, 5), new(B, C, 6));
        Assert.Equal(11, access.Minutes(A, C));
        Assert.Equal([A, B, C], access.Way(A, C).ToArray());
    }

    [Fact]
    public void Minutes_DirectWayIsShorter_StaysDirect()
    {
        AccessStates access = Three(new(A, C, 10), new(A, B, 5), new(B, C, 6));
        Assert.Equal(10, access.Minutes(A, C));
        Assert.Equal([A, C], access.Way(A, C).ToArray());
    }

    // Two hops on from the second state, so that no row of the table is the first.
    [Fact]
    public void Way_SeveralHops_PassesEachOfThem()
    {
        AccessId d = new("d");
        AccessStates access = new(
            [new(A, Role.Anyone), new(B, Role.Anyone), new(C, Role.Anyone), new(d, Role.Anyone)],
            [new(B, A, 1), new(A, C, 2), new(C, d, 3), new(B, d, 50), new(d, B, 7)], A);
        Assert.Equal([B, A, C, d], access.Way(B, d).ToArray());
        Assert.Equal(6, access.Minutes(B, d));
        Assert.Equal([C, d, B, A], access.Way(C, A).ToArray());
        Assert.Equal(11, access.Minutes(C, A));
        Assert.Equal(0, access.Minutes(C, C));
    }

    [Fact]
    public void Minutes_SameMoveTwice_IsTheShorter()
    {
        AccessStates access = Three(new(A, B, 5), new(A, B, 9));
        Assert.Equal(5, access.Minutes(A, B));
    }

    [Fact]
    public void IndexOf_State_IsItsPlace()
    {
        AccessStates access = Three();
        Assert.Equal([0, 1, 2], access.All.Select(state => access.IndexOf(state.Id)));
        Assert.Equal(-1, access.IndexOf(new AccessId("roof")));
        Assert.False(access.Contains(new AccessId("roof")));
    }

    [Fact]
    public void OpenTo_RefusedState_IsLeftOut()
    {
        AccessStates access = Three(new(A, B, 1), new(B, A, 1), new(A, C, 1), new(C, A, 1));
        Assert.Equal([A, C], access.OpenTo(Technician, A, new HashSet<AccessId> { B }).All.Select(state => state.Id));
        // Where the unit stands it stands, refused or not.
        Assert.Equal([A, C],
            access.OpenTo(Technician, A, new HashSet<AccessId> { A, B }).All.Select(state => state.Id));
    }

    [Fact]
    public void OpenTo_UnknownState_Throws() =>
        Assert.Throws<ArgumentException>(() => Three().OpenTo(Technician, new AccessId("roof")));

    [Fact]
    public void Minutes_UnknownState_Throws() =>
        Assert.Throws<ArgumentException>(() => Three().Minutes(A, new AccessId("roof")));

    [Fact]
    public void Minutes_NoWay_IsInfinite()
    {
        AccessStates access = Three(new AccessMove(A, B, 5));
        Assert.Equal(double.PositiveInfinity, access.Minutes(B, A));
        Assert.Empty(access.Way(B, A));
    }

    [Fact]
    public void Way_SameState_IsThatState() => Assert.Equal([A], Three().Way(A, A).ToArray());

    [Fact]
    public void OpenTo_StateOfAHigherRole_IsNotPassedThrough()
    {
        AccessStates access = new(
            [new(A, Role.Anyone), new(B, Technician), new(C, Role.Anyone)],
            [new(A, B, 1), new(B, C, 1), new(A, C, 9), new(C, A, 9)], A, B);
        AccessStates open = access.OpenTo(Role.Anyone, A);
        Assert.Equal([A, C], open.All.Select(state => state.Id));
        Assert.Equal(9, open.Minutes(A, C));
        Assert.Null(open.Verify);
    }

    [Fact]
    public void OpenTo_NoWayBack_IsLeftOut() =>
        Assert.Equal([A], Three(new AccessMove(A, B, 5)).OpenTo(Role.Anyone, A).All.Select(state => state.Id));

    [Fact]
    public void AccessStates_UnknownStart_Throws() =>
        Assert.Throws<ArgumentException>(() => new AccessStates([new AccessState(A, Role.Anyone)], [], B));

    [Fact]
    public void AccessStates_UnknownVerify_Throws() =>
        Assert.Throws<ArgumentException>(() => new AccessStates([new AccessState(A, Role.Anyone)], [], A, B));

    [Fact]
    public void AccessStates_NoState_Throws() => Assert.Throws<ArgumentException>(() => new AccessStates([], [], A));

    [Fact]
    public void AccessStates_StateTwice_Throws() => Assert.Throws<ArgumentException>(() =>
        new AccessStates([new AccessState(A, Role.Anyone), new AccessState(A, Technician)], [], A));

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void AccessStates_MinutesOutOfRange_Throws(double minutes) =>
        Assert.Throws<ArgumentException>(() => Three(new AccessMove(A, B, minutes)));

    private static AccessStates Three(params AccessMove[] moves) =>
        new([new(A, Role.Anyone), new(B, Role.Anyone), new(C, Role.Anyone)], moves, A);
}
