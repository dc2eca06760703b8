namespace DxAssistant.Knowledge.Content.Model;

/// <summary>One input of a check's calculation, as its page gives it.</summary>
/// <param name="Rating">The rating of the series that holds the value; null when the page gives it itself.</param>
/// <param name="Source">Null when the value is the series page's.</param>
/// <param name="Curve">The id of the curve page the value links to; null when it is no curve.</param>
/// <param name="Meter">The id of the page of meters the value links to; null when it is none.</param>
public sealed record ExpectedInput(string Name, Passage Value, string? Rating, Source? Source, string? Curve = null,
    string? Meter = null);
