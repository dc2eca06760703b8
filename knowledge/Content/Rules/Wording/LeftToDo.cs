using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Wording;

/// <summary>A place that a new page left for its author to write.</summary>
/// <example>Bad: <c>To do: say where the leads go.</c>. Good: <c>Across the terminals, one lead off</c>.</example>
/// <remarks>
/// A warning, so that a walk can be tried before every page is written. An input still to be written is WrongInput's.
/// </remarks>
internal sealed class LeftToDo : IContentRule
{
    public string Name => RuleBook.LeftToDo;

    public string Meaning => "A place that a new page left for its author to write.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## How
        1. ⟦To do: say how it is done, one step a line.⟧
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## How
        1. Find the plug, upper right on the board.
        2. Press it home.
        """);

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("checks/room-sensor.md", """
            ## Readings
            | Reading | Unit | Possible | Where |
            |---|---|---|---|
            | resistance | kΩ | 0 kΩ to 2000 kΩ | ⟦To do: say where the leads go.⟧ |
            | temperature | °C | −20 °C to 60 °C | Thermometer beside the sensor |
            """),
            new RuleExample("checks/room-sensor.md", """
            ## Readings
            | Reading | Unit | Possible | Where |
            |---|---|---|---|
            | resistance | kΩ | 0 kΩ to 2000 kΩ | The two pins of RA |
            | temperature | °C | −20 °C to 60 °C | Thermometer beside the sensor |
            """)),
    ];

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.Written.SelectMany(Check);

    private IEnumerable<Diagnostic> Check(Page page) =>
        page.Source.ToDos.Where(at => PageTitle.HeadingAbove(page.Source.Text, at.Start) != "Expected")
            .Select(at => new Diagnostic(Name, Severity.Warning, page.Source.At(at), "this is still to be written"));
}
