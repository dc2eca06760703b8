using System.Collections.Immutable;
using System.Text.Json.Serialization;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Conversation.Told;

/// <summary>One thing that a whole message tells. There are exactly eight kinds.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "told")]
[JsonDerivedType(typeof(Unit), "unit")]
[JsonDerivedType(typeof(AtUnit), "person")]
[JsonDerivedType(typeof(Mode), "mode")]
[JsonDerivedType(typeof(Code), "code")]
[JsonDerivedType(typeof(Symptom), "symptom")]
[JsonDerivedType(typeof(Outcome), "outcome")]
[JsonDerivedType(typeof(Measured), "measured")]
[JsonDerivedType(typeof(Tried), "tried")]
public abstract record ToldThing
{
    private ToldThing() { }

    /// <summary>Which series the unit is of.</summary>
    public sealed record Unit(string Series) : ToldThing;

    /// <summary>Who is at the unit.</summary>
    public sealed record AtUnit(string Role) : ToldThing;

    /// <summary>The mode the unit runs in.</summary>
    /// <param name="Running">The end of the id of the phrase that names it, such as <c>cooling</c>.</param>
    public sealed record Mode(string Running) : ToldThing;

    /// <summary>What the display shows.</summary>
    public sealed record Code(string Shown, string? Look) : ToldThing;

    /// <summary>What is wrong, in words.</summary>
    /// <param name="ComesAndGoes">Whether it was said to show only now and then.</param>
    public sealed record Symptom(string Id, double Confidence, bool ComesAndGoes) : ToldThing;

    /// <summary>The outcome of a check that was done before.</summary>
    /// <param name="Doubtful">Whether it was said with doubt.</param>
    public sealed record Outcome(string Check, string Seen, bool Doubtful) : ToldThing;

    /// <summary>The readings of a check that was done before, all of them.</summary>
    public sealed record Measured(string Check, ImmutableArray<GivenReading> Readings) : ToldThing
    {
        /// <summary>Whether they were said with doubt.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
        public bool Doubtful { get; init; }
    }

    /// <summary>A repair that was made before the case began and did not cure it.</summary>
    public sealed record Tried(string Repair) : ToldThing;
}
