using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Api;

/// <summary>Values of a query that must be one of a few.</summary>
internal static class OneOf
{
    /// <summary>What is said to any other value; null for one of them, and for none.</summary>
    public static IResult? Refuse(string name, string? value, IEnumerable<string> choices) =>
        string.IsNullOrEmpty(value) || choices.Contains(value, StringComparer.OrdinalIgnoreCase) ? null
        : Refusal.Because(StatusCodes.Status400BadRequest,
            $"There is no such {name}: give one of {string.Join(", ", choices)}, or leave it out.");

    /// <summary>The same for the names of an enumeration.</summary>
    public static IResult? Refuse<T>(string name, string? value) where T : struct, Enum =>
        Refuse(name, value, Enum.GetNames<T>().Select(choice => choice.ToLowerInvariant()));
}
