namespace DxAssistant.Server.Commands.Scoring;

/// <summary>What a scored file came to.</summary>
internal interface IScoreSheet
{
    /// <summary>An answer was wrong.</summary>
    bool HasWrong { get; }

    /// <summary>The figures first, then what was not right.</summary>
    /// <param name="figuresOnly">Leave out every line of the file: for a set that must not be looked at.</param>
    string Text(bool figuresOnly);
}
