namespace DxAssistant.Knowledge.Content.Shapes;

/// <summary>What must stand under a heading.</summary>
internal enum SectionContent
{
    /// <summary>Anything, or nothing: a rule of its own looks at it.</summary>
    Free,

    /// <summary>Anything, but something.</summary>
    Any,

    /// <summary>One paragraph or more.</summary>
    Sentence,

    /// <summary>A list, bulleted or numbered.</summary>
    List,

    /// <summary>One table with the columns of the shape.</summary>
    Table,
}
