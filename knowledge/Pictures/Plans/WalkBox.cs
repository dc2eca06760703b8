namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>The lines of a step's box, for a width.</summary>
internal sealed class WalkBox(double width)
{
    public const int Size = 12, Small = 11;
    public const double Inside = 7;
    private const double LineHeight = 14.5, RuleRoom = 5, RoomForNumber = 38;

    private readonly Dictionary<(string, int, bool), IReadOnlyList<string>> wrapped = [];

    public double Width => width;

    /// <summary>What is written in a box, from its top.</summary>
    public IEnumerable<WalkLine> Lines(WalkStep step)
    {
        double y = 1;
        WalkLine Line(string look, string text, int size, bool bold) => new(look, text, size, bold, y += LineHeight);
        if (step.State is not null)
            foreach (string line in Wrap($"▲ {step.State}", Size, bold: true))
                yield return Line("off", line, Size, true);
        foreach (string line in Wrap($"{step.Number}  {step.Title}", Size, bold: true))
            yield return Line("ink", line, Size, true);
        if (step.Note is not null)
            foreach (string line in Wrap(step.Note, Small, bold: false)) yield return Line("soft", line, Small, false);
        for (int row = 0; row < step.Rows.Length; row++)
        {
            WalkRow way = step.Rows[row];
            if (row == 0) y += RuleRoom;
            bool isFirst = true;
            if (way.Next is not null)
                foreach (string line in Wrap(way.Answer, Size, bold: false, RoomForNumber))
                {
                    yield return Line("found", line, Size, false)
                        with { Way = isFirst ? way : null, IsRule = isFirst && row == 0 };
                    isFirst = false;
                }
            else
                foreach (string line in Wrap($"{way.Answer}: {way.Suspect}", Small, bold: false))
                {
                    yield return Line("soft", line, Small, false) with { IsRule = isFirst && row == 0 };
                    isFirst = false;
                }
        }
    }

    public double Height(WalkStep step) => Lines(step).Last().Y + 6;

    private IReadOnlyList<string> Wrap(string words, int size, bool bold, double less = 0)
    {
        if (wrapped.TryGetValue((words, size, bold), out IReadOnlyList<string>? known)) return known;
        double room = width - 2 * Inside - 2 - less;
        return wrapped[(words, size, bold)] = TextSize.Wrapped(words, bold ? room / 1.12 : room, size);
    }
}
