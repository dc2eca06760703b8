namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>What a label names.</summary>
internal enum LabelKind
{
    /// <summary>A line of the form that was asked.</summary>
    Asked,

    /// <summary>A terminal or a pair of them.</summary>
    Terminal,

    /// <summary>A part or place of the system.</summary>
    Place,

    /// <summary>The air of a room or of the outdoors, whose temperature has bounds.</summary>
    Air,

    /// <summary>Every line of the form: "all three", "each".</summary>
    All,
}
