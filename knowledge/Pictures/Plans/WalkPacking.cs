namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>Places the steps of a walk in columns: one below its predecessor, the others to the right of it.</summary>
/// <remarks>
/// The branch with most steps goes on downwards: a right-heavy drawing, which needs few columns (Crescenzi, Di Battista
/// and Piperno, A note on optimal area algorithms for upward drawings of binary trees, 1992; from memory). Ways run
/// down between the columns in lanes, the later further to the left, so that no two cross.
/// </remarks>
internal sealed class WalkPacking
{
    public const double Gap = 40, LaneRoom = 5.5, FirstLane = 11, EntryAt = 11;
    private const double RowGap = 11;
    private const int MostLanes = 5;

    private readonly WalkBox box;
    private readonly double top;
    private readonly double[] free;
    private readonly List<(double Until, int Lane)>[] lanes;

    private WalkPacking(WalkBox box, double top, int columns)
    {
        (this.box, this.top) = (box, top);
        free = [.. Enumerable.Repeat(top, columns)];
        lanes = [.. Enumerable.Range(0, columns).Select(_ => new List<(double, int)>())];
    }

    /// <summary>
    /// Places all steps from a height on; false when that needs more columns or lies below the floor.
    /// </summary>
    public static bool TryPlace(WalkStep first, WalkBox box, int columns, double top, double floor)
    {
        if (Columns(first, 0) > columns) return false;
        Number(first);
        var packing = new WalkPacking(box, top, columns);
        return packing.Place(first, 0, top) && packing.free.Max() - RowGap <= floor;
    }

    /// <summary>How many columns a walk needs.</summary>
    public static int Columns(WalkStep step, int column) => step.Right.Select(row => Columns(row.Next!, column + 1))
        .Append(step.Below is { } below ? Columns(below, column) : column + 1).Max();

    // Column by column and downwards, so that a number is found by looking along the columns.
    private static void Number(WalkStep first)
    {
        var columns = new SortedDictionary<int, List<WalkStep>>();
        void Enter(WalkStep step, int column)
        {
            if (!columns.TryGetValue(column, out List<WalkStep>? steps)) columns[column] = steps = [];
            steps.Add(step);
            foreach (WalkRow row in step.Right) Enter(row.Next!, column + 1);
            if (step.Below is { } below) Enter(below, column);
        }

        Enter(first, 0);
        int number = 0;
        foreach (WalkStep step in columns.Values.SelectMany(steps => steps)) step.Number = ++number;
    }

    private bool Place(WalkStep step, int column, double atLeast)
    {
        int ways = step.Right.Count();
        double at = Math.Max(atLeast, free[column]);
        while (ways > 0 && Active(column, at).DefaultIfEmpty((at, -1)).Max(lane => lane.Item2) + 1 + ways > MostLanes)
        {
            if (!Active(column, at).Any()) return false;
            at = Active(column, at).Min(lane => lane.Until);
        }

        (step.Column, step.Top, step.Height) = (column, at, box.Height(step));
        free[column] = at + step.Height + RowGap;
        foreach (WalkLine line in box.Lines(step).Where(line => line.Way is { IsDown: false }))
            if (!PlaceRight(line.Way!, column, at + line.Y - 4)) return false;
        return step.Below is not { } below || Place(below, column, free[column]);
    }

    private bool PlaceRight(WalkRow way, int column, double y)
    {
        int lane = Active(column, y).Select(each => each.Lane + 1).DefaultIfEmpty(0).Max();
        if (!Place(way.Next!, column + 1, Math.Max(top, y - EntryAt))) return false;
        double entry = way.Next!.Top + EntryAt;
        way.Lane = lane;
        if (entry > y + 0.05) lanes[column].Add((entry, lane));
        return true;
    }

    private IEnumerable<(double Until, int Lane)> Active(int column, double y) =>
        lanes[column].Where(lane => lane.Until > y);
}
