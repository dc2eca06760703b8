using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Sheets;

/// <summary>The titles of pages by their ids, for the head of a sheet and its summary.</summary>
/// <remarks>An id that the content no longer has is shown as it stands in the log.</remarks>
public sealed record TitleBook(
    ImmutableDictionary<string, string> Series,
    ImmutableDictionary<string, string> Symptoms,
    ImmutableDictionary<string, string> Faults,
    ImmutableDictionary<string, string> Checks,
    ImmutableDictionary<string, string> Repairs,
    ImmutableDictionary<string, string> Access,
    ImmutableDictionary<string, string> Roles)
{
    public static TitleBook Empty { get; } = new(None, None, None, None, None, None, None);

    private static ImmutableDictionary<string, string> None => ImmutableDictionary<string, string>.Empty;

    public static TitleBook Of(Library library) => new(
        library.Series.ToImmutableDictionary(s => s.Key, s => s.Value.Title.Text),
        library.Symptoms.ToImmutableDictionary(s => s.Key.ToString(), s => s.Value.Title.Text),
        library.Faults.ToImmutableDictionary(s => s.Key.ToString(), s => s.Value.Title.Text),
        library.Checks.ToImmutableDictionary(s => s.Key.ToString(), s => s.Value.Title.Text),
        library.Repairs.ToImmutableDictionary(s => s.Key.ToString(), s => s.Value.Title.Text),
        library.Access.ToImmutableDictionary(s => s.Key.ToString(), s => s.Value.Title.Text),
        library.Roles.ToImmutableDictionary(r => r.Role.Id, r => r.Name.Text));

    public static string Find(ImmutableDictionary<string, string> titles, string id) =>
        titles.GetValueOrDefault(id, id);
}
