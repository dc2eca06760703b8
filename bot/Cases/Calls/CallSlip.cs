namespace DxAssistant.Cases.Calls;

/// <summary>A call that was put aside, to be taken up again.</summary>
/// <param name="Caller">Who called; null when nobody said.</param>
/// <param name="Phone">Where to call back; null when nobody said.</param>
/// <param name="Due">When to call back; null for as soon as can be.</param>
/// <param name="At">When it was put aside, UTC.</param>
/// <param name="By">Who put it aside.</param>
public sealed record CallSlip(string Case, string? Caller, string? Phone, DateTimeOffset? Due, DateTimeOffset At,
    string By);
