using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Serials;

namespace DxAssistant.Knowledge.Content.Rules.Units;

/// <summary>A pattern of serial numbers without an example, or an example that does not fit the pattern.</summary>
/// <example>Bad: <c>serial-example: AO12</c> to the pattern <c>AO[0-9]{8}</c>. Good: <c>AO24071532</c>.</example>
/// <remarks>The example is what a person is shown whose serial number does not fit.</remarks>
internal sealed class SerialDoesNotFit : IContentRule
{
    public string Name => "serial-does-not-fit";

    public string Meaning =>
        "A pattern of serial numbers without an example, or an example that does not fit the pattern.";

    public RuleExample Bad { get; } = new("series/alder-one.md", """
        ---
        kind: series
        id: alder-one
        display: two digits
        market: °C and kPa
        serial: "AO[0-9]{8}"
        serial-example: ⟦AO12⟧
        ---
        """);

    public RuleExample Good { get; } = new("series/alder-one.md", """
        ---
        kind: series
        id: alder-one
        display: two digits
        market: °C and kPa
        serial: "AO[0-9]{8}"
        serial-example: AO24071532
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Series)
        where page.Front is { Problem: null }
        let found = Check(page, Field(page, "serial"), Field(page, "serial-example"))
        where found is not null
        select found;

    private Diagnostic? Check(Page page, FrontMatterField? pattern, FrontMatterField? example) =>
        (pattern, example) switch
    {
        ({ Text: { } } alone, null) => page.Error(
            Name, alone.Span, "a pattern without an example", "add `serial-example:` with a serial number that fits"),
        (null, { } alone) => page.Error(
            Name, alone.Span, "an example without a pattern",
            "add `serial:` with a regular expression for the whole number"),
        ({ Text: { } form }, { Text: { } shown } field) when SerialPattern.TryMake(form, shown) is { } made
            && made.Read(shown) != shown =>
            page.Error(Name, field.Span, $"`{shown}` does not fit the pattern `{form}`"),
        _ => null,
    };

    private static FrontMatterField? Field(Page page, string name) =>
        page.Front!.Field(name) is { Values.IsEmpty: false } field ? field : null;
}
