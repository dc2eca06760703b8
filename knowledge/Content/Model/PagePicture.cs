namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A drawing of a page.</summary>
/// <param name="Path">Where it lies, for example <c>pictures/fan-plug.svg</c>.</param>
/// <param name="Svg">The drawing alone, one element without declaration or comments; the ids in it begin with the
/// picture's own name, so that several fit into one document.</param>
/// <param name="Words">What it shows, for those who cannot see it.</param>
/// <param name="Series">The series it is of; null for all.</param>
public sealed record PagePicture(string Path, string Svg, Passage Words, string? Series = null);
