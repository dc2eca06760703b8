using System.Collections.Immutable;
using System.Globalization;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>How the faults in question narrowed, step by step.</summary>
public sealed class BeliefPicture
{
    private const int FaultsShown = 4;
    private const double Left = 46;
    private const double Right = 294;
    private const double Top = 10;
    private const double Bottom = 120;
    private const double LineHeight = 19;

    // Each fault has its own stroke, so that no colour is needed to tell them apart.
    private static readonly (string Look, string Stroke)[] Strokes =
    [
        ("found", " stroke-width=\"4\""), ("ink", ""), ("ink", " stroke-dasharray=\"7 4\""),
        ("soft", " stroke-dasharray=\"1.5 5\" stroke-width=\"3\""),
    ];

    private readonly ImmutableArray<BeliefStep> _steps;
    private readonly Func<string, string> _title;
    private readonly ImmutableArray<string> _faults;

    private BeliefPicture(ImmutableArray<BeliefStep> steps, Func<string, string> title)
    {
        (_steps, _title) = (steps, title);
        _faults = [.. steps[^1].Probabilities.OrderByDescending(pair => Rounded(pair.Value))
            .ThenByDescending(pair => Rounded(steps.Max(step => step.Probabilities.GetValueOrDefault(pair.Key))))
            .ThenBy(pair => pair.Key, StringComparer.Ordinal).Take(FaultsShown).Select(pair => pair.Key)];
    }

    /// <summary>Draws it.</summary>
    /// <param name="steps">In the order learnt; two or more, or there is nothing that narrowed.</param>
    /// <param name="title">The title of a fault by its id.</param>
    public static Drawn? Of(ImmutableArray<BeliefStep> steps, Func<string, string> title, IPictureWords words) =>
        steps.Length < 2 || steps[^1].Probabilities.IsEmpty ? null : new BeliefPicture(steps, title).Draw(words);

    private Drawn Draw(IPictureWords words)
    {
        string[] faults = [.. _faults.Select(fault => $"{_title(fault)} {Percent(_steps[^1], fault)}")];
        string[] learnt = [.. _steps.Select((step, i) => $"{i + 1}. {step.What}")];
        double keyHeight = (Lines(faults, 40).Sum(lines => lines.Count) + Lines(learnt, 4).Sum(lines => lines.Count))
            * LineHeight + 18;
        var pen = new Pen(300, Bottom + 24 + keyHeight);
        Rule(pen);
        for (int i = _faults.Length - 1; i >= 0; i--) DrawFault(pen, i);
        double y = WriteFaults(pen, Bottom + 40, faults);
        foreach (string line in Lines(learnt, 4).SelectMany(lines => lines)) y = Write(pen, "soft", 4, y, line);
        string said = string.Join("; ", _steps.Select(step => words.Say("picture-belief-step", ("step", step.What),
            ("fault", _title(Leader(step))), ("percent", Percent(step, Leader(step))))));
        string text = words.Say("picture-belief", ("steps", said));
        return new Drawn("belief", pen.Finish("belief", words.Say("picture-belief-title"), text), "picture-belief",
            text);
    }

    private static Scale Up => new(0, 1, Bottom, Top);

    private double X(int step) =>
        Left + 14 + (Right - Left - 28) * step / Math.Max(1, _steps.Length - 1);

    private void Rule(Pen pen)
    {
        foreach (double share in new[] { 0, 0.5, 1 })
        {
            string figure = (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";
            pen.Line("thin", Left, Up.At(share), Right, Up.At(share));
            pen.Text("soft", Left - 4, Up.At(share) + 4.5, figure, Anchor.End, TextSize.Scale);
        }

        int every = (_steps.Length + 11) / 12;
        for (int step = 0; step < _steps.Length; step += every)
            pen.Text("soft", X(step), Bottom + 17, (step + 1).ToString(CultureInfo.InvariantCulture), Anchor.Middle,
                TextSize.Scale);
    }

    // Stepped: what is believed holds until the next thing is learnt.
    private void DrawFault(Pen pen, int place)
    {
        var points = new List<(double X, double Y)>();
        for (int step = 0; step < _steps.Length; step++)
        {
            double y = Up.At(_steps[step].Probabilities.GetValueOrDefault(_faults[place]));
            points.Add((step == 0 ? Left : (X(step - 1) + X(step)) / 2, y));
            points.Add((step == _steps.Length - 1 ? Right : (X(step) + X(step + 1)) / 2, y));
        }

        pen.Polyline(Strokes[place].Look, points, Strokes[place].Stroke);
    }

    private static double WriteFaults(Pen pen, double y, string[] faults)
    {
        IReadOnlyList<string>[] lines = [.. Lines(faults, 40)];
        for (int i = 0; i < lines.Length; i++)
        {
            pen.Line(Strokes[i].Look, 4, y - 5, 34, y - 5, Strokes[i].Stroke);
            foreach (string line in lines[i]) y = Write(pen, "ink", 40, y, line);
        }

        return y + 6;
    }

    private static IEnumerable<IReadOnlyList<string>> Lines(IEnumerable<string> texts, double left) =>
        texts.Select(text => TextSize.Wrapped(text, 298 - left, TextSize.Plain));

    private static double Write(Pen pen, string look, double x, double y, string line)
    {
        pen.Text(look, x, y, line);
        return y + LineHeight;
    }

    private static string Leader(BeliefStep step) => step.Probabilities.OrderByDescending(pair => Rounded(pair.Value))
        .ThenBy(pair => pair.Key, StringComparer.Ordinal).First().Key;

    // As the sentences say it: never 100, since no reading proves that much, and never 0.
    private static string Percent(BeliefStep step, string fault) =>
        Math.Clamp(Math.Round(step.Probabilities.GetValueOrDefault(fault) * 100), 1, 99)
            .ToString("0", CultureInfo.InvariantCulture) + " %";

    private static double Rounded(double probability) => Math.Round(probability, 6);
}
