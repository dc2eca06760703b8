using System.Buffers;
using System.Text;
using System.Text.Json;

namespace DxAssistant.Cases.Log;

/// <summary>The one form in which JSON is hashed: members in the order they came, no blanks, numbers digit for digit,
/// all but plain ASCII letters escaped.</summary>
internal static class CanonicalJson
{
    /// <summary>The one form of a value.</summary>
    /// <remarks>Written twice gives the same again, so a file that an editor has indented still has its hash.</remarks>
    public static string Of(JsonElement value)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(bytes)) value.WriteTo(writer);
        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }

    /// <summary>The one form of JSON text.</summary>
    /// <exception cref="JsonException">That is not JSON.</exception>
    public static string Of(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Of(document.RootElement);
    }
}
