using System.Text.Json.Serialization;

namespace DxAssistant.Cases.Claims;

/// <summary>One thing that happened to a claim. Its state is a fold over these.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "claim")]
[JsonDerivedType(typeof(Begun), "begun")]
[JsonDerivedType(typeof(UnitTold), "unit-told")]
[JsonDerivedType(typeof(Readied), "readied")]
[JsonDerivedType(typeof(Submitted), "submitted")]
[JsonDerivedType(typeof(Approved), "approved")]
[JsonDerivedType(typeof(Declined), "declined")]
[JsonDerivedType(typeof(Returned), "returned")]
public abstract record ClaimEvent
{
    private ClaimEvent() { }

    /// <summary>A claim was begun from a case.</summary>
    public sealed record Begun(string Case) : ClaimEvent;

    /// <summary>The unit was described; takes the place of an earlier description.</summary>
    public sealed record UnitTold(ClaimUnit Unit) : ClaimEvent;

    /// <summary>The sheet stands from now on.</summary>
    /// <param name="Sheet">Null only where the log is given out beside the sheet.</param>
    /// <param name="Override">Why it is ready although something is missing; null when nothing is.</param>
    public sealed record Readied(ClaimSheet? Sheet, string? Override) : ClaimEvent;

    public sealed record Submitted : ClaimEvent;

    public sealed record Approved(string? Why) : ClaimEvent;

    public sealed record Declined(string Why) : ClaimEvent;

    public sealed record Returned(string Why) : ClaimEvent;
}
