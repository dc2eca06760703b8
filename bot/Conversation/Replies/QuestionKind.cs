using System.Text.Json.Serialization;

namespace DxAssistant.Conversation.Replies;

/// <summary>What an open question asks.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<QuestionKind>))]
public enum QuestionKind
{
    /// <summary>What is wrong, in words or as a code.</summary>
    [JsonStringEnumMemberName("complaint")] Complaint,

    /// <summary>Which series the unit is.</summary>
    [JsonStringEnumMemberName("series")] Series,

    /// <summary>Who is at the unit.</summary>
    [JsonStringEnumMemberName("role")] Role,

    /// <summary>Which of several symptoms was meant.</summary>
    [JsonStringEnumMemberName("symptom")] Symptom,

    /// <summary>Which of several look-alike codes is shown.</summary>
    [JsonStringEnumMemberName("code")] Code,

    /// <summary>Whether a whole message was understood rightly.</summary>
    [JsonStringEnumMemberName("told")] Told,

    /// <summary>Which of several symptoms without a common cause to begin with.</summary>
    [JsonStringEnumMemberName("first")] First,

    /// <summary>Whether one step towards an access state is done.</summary>
    [JsonStringEnumMemberName("access")] Access,

    /// <summary>The outcome of a check, with readings where <see cref="OpenQuestion.Fields"/> lists them.</summary>
    [JsonStringEnumMemberName("check")] Check,

    /// <summary>Which reading was meant.</summary>
    [JsonStringEnumMemberName("meaning")] Meaning,

    /// <summary>Which of two contradicting results to take again.</summary>
    [JsonStringEnumMemberName("contradiction")] Contradiction,

    /// <summary>Whether a check that was left out is done before the part is changed that it would prove.</summary>
    [JsonStringEnumMemberName("proof")] Proof,

    /// <summary>Whether a check that was left out is done after all before the walk ends.</summary>
    [JsonStringEnumMemberName("left-out")] LeftOut,

    /// <summary>Whether a trouble that was told with doubt is there.</summary>
    [JsonStringEnumMemberName("doubt")] Doubt,

    /// <summary>Whether the trouble is gone.</summary>
    [JsonStringEnumMemberName("gone")] Gone,

    /// <summary>Whether a repair is done.</summary>
    [JsonStringEnumMemberName("repair")] Repair,

    /// <summary>Whether the unit works after a repair.</summary>
    [JsonStringEnumMemberName("verify")] Verify,

    /// <summary>Whether anything is left after a verified repair.</summary>
    [JsonStringEnumMemberName("left-over")] LeftOver,

    /// <summary>Nothing more is asked; the case may be opened again.</summary>
    [JsonStringEnumMemberName("closed")] Closed,

    /// <summary>In which language the case goes on.</summary>
    [JsonStringEnumMemberName("language")] Language,
}
