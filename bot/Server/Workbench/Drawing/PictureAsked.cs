namespace DxAssistant.Server.Workbench.Drawing;

/// <summary>Which picture is wanted.</summary>
/// <param name="Kind">One of those of <see cref="LibraryPictures"/>.</param>
/// <param name="Checks">Most checks of a walk; null for the plan as it is.</param>
/// <param name="Language">Null for the main one.</param>
internal sealed record PictureAsked(string Kind, string? Series = null, string? Symptom = null, int? Checks = null,
    string? Language = null);
