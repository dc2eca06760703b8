namespace DxAssistant.Server.Simulating;

/// <summary>One unit to play: what is reported, on what, by whom, and what is really wrong.</summary>
/// <param name="Seed">Draws everything about the unit that the pages leave open.</param>
internal sealed record SimulatedCase(string Symptom, string Series, string Role, string Fault, ulong Seed)
{
    public Play Play { get; init; }

    /// <summary>
    /// A symptom that is told with doubt and that the fault does not give; null but in
    /// <see cref="Simulating.Play.WrongSign"/>.
    /// </summary>
    public string? WrongSign { get; init; }

    /// <summary>
    /// A part that was changed before, in vain; null but in <see cref="Simulating.Play.VainRepair"/>.
    /// </summary>
    public string? VainPart { get; init; }

    /// <summary>
    /// What shows once the first fault is cured; null but in <see cref="Simulating.Play.SecondFault"/>.
    /// </summary>
    public Trouble? Second { get; init; }
}
