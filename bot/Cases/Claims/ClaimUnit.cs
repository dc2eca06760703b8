namespace DxAssistant.Cases.Claims;

/// <summary>The unit a claim is for, as it was told; null where nothing was.</summary>
/// <param name="Site">Where it stands.</param>
/// <param name="Bought">The day on the bill.</param>
/// <param name="Registered">The day of registration; null also when it never was.</param>
public sealed record ClaimUnit(
    string? Model = null, string? Serial = null, string? Site = null, DateOnly? Installed = null,
    DateOnly? Bought = null, DateOnly? Registered = null)
{
    /// <summary>A unit of which nothing was told.</summary>
    public static ClaimUnit Unknown { get; } = new();
}
