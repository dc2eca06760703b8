using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Sheets;

/// <summary>A message as it is written on the sheet.</summary>
public static class SaidText
{
    /// <param name="asked">The question that was open when the message came in; null at the opening.</param>
    /// <returns>Null for the opening, which says nothing.</returns>
    public static string? Of(MessageBody body, OpenQuestion? asked) => body switch
    {
        MessageBody.Words words => words.Text,
        MessageBody.Choice choice => Label(choice.Key, asked),
        MessageBody.Readings readings => string.Join(", ", readings.Fields.Select(f => Filled(f, asked))),
        MessageBody.Command command => CommandNames.Label(command.Word),
        MessageBody.Earlier earlier => earlier.Reopens ? "Another visit" : "Serial number written down",
        _ => null,
    };

    private static string Label(string key, OpenQuestion? asked) =>
        asked?.Options.FirstOrDefault(option => option.Key == key)?.Label ?? key;

    // A bare number was taken in the unit of its field: the sheet shows which.
    private static string Filled(FilledField filled, OpenQuestion? asked)
    {
        bool bare = double.TryParse(filled.Words, System.Globalization.CultureInfo.InvariantCulture, out _);
        string unit = bare && asked?.Fields.FirstOrDefault(f => f.Label == filled.Label) is { } field
            ? $" {field.Unit}" : "";
        return $"{filled.Label} {filled.Words}{unit}";
    }
}
