using System.Text.Json.Serialization;

namespace DxAssistant.Conversation.Replies;

/// <summary>What a segment is to the reader.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<SegmentKind>))]
public enum SegmentKind
{
    /// <summary>What was understood of the message.</summary>
    [JsonStringEnumMemberName("understood")] Understood,

    /// <summary>Something to know before answering.</summary>
    [JsonStringEnumMemberName("notice")] Notice,

    /// <summary>What a reading says.</summary>
    [JsonStringEnumMemberName("verdict")] Verdict,

    /// <summary>A hazard.</summary>
    [JsonStringEnumMemberName("caution")] Caution,

    /// <summary>How to do the step, one act.</summary>
    [JsonStringEnumMemberName("instruction")] Instruction,

    /// <summary>The question to answer.</summary>
    [JsonStringEnumMemberName("question")] Question,

    /// <summary>A reason for the step or the conclusion.</summary>
    [JsonStringEnumMemberName("why")] Why,

    /// <summary>The fault that was found.</summary>
    [JsonStringEnumMemberName("conclusion")] Conclusion,

    /// <summary>The repair to make, or a step of it.</summary>
    [JsonStringEnumMemberName("repair")] Repair,

    /// <summary>What to do when the walk ends without a repair.</summary>
    [JsonStringEnumMemberName("advice")] Advice,

    /// <summary>A request that is not carried out, and the safe way.</summary>
    [JsonStringEnumMemberName("refusal")] Refusal,
}
