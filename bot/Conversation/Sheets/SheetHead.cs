using System.Collections.Immutable;
using DxAssistant.Conversation.State;

namespace DxAssistant.Conversation.Sheets;

/// <summary>The boxes at the top of a sheet; null while a box is still blank.</summary>
/// <param name="Unit">The series.</param>
/// <param name="Shows">The display code or the symptoms.</param>
/// <param name="Who">The role of the person at the unit.</param>
/// <param name="Stands">The access state that was confirmed last.</param>
/// <param name="Ended">How the case ended.</param>
public sealed record SheetHead(string? Unit, string? Shows, string? Who, string? Stands, string? Ended)
{
    public static SheetHead Of(CaseState state, TitleBook titles) => new(
        state.Series is { } series ? TitleBook.Find(titles.Series, series) : null,
        Shown(state, titles),
        state.Role is { } role ? TitleBook.Find(titles.Roles, role) : null,
        state.Access is { } access ? TitleBook.Find(titles.Access, access) : null,
        state.ClosedHow);

    private static string? Shown(CaseState state, TitleBook titles)
    {
        ImmutableArray<string> symptoms = [.. state.Symptoms.Select(s => TitleBook.Find(titles.Symptoms, s.Symptom))];
        return symptoms.IsEmpty ? state.Code : string.Join("; ", symptoms);
    }
}
