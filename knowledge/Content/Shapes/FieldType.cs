namespace DxAssistant.Knowledge.Content.Shapes;

/// <summary>What may stand behind a field's colon.</summary>
internal enum FieldType
{
    /// <summary>Any words on one line.</summary>
    Words,

    /// <summary>One of the field's choices.</summary>
    Choice,

    /// <summary>Minutes: a number from 0 to 1,440.</summary>
    Minutes,

    /// <summary>A whole number from 0 to 1,000.</summary>
    Count,

    /// <summary><c>true</c> or <c>false</c>.</summary>
    YesNo,

    /// <summary>A regular expression.</summary>
    Pattern,

    /// <summary>One id, or a list of ids.</summary>
    Ids,

    /// <summary>One word or a list of words.</summary>
    List,
}
