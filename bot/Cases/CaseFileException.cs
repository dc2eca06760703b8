namespace DxAssistant.Cases;

/// <summary>The file of cases cannot be used; the message says why and what to do.</summary>
public sealed class CaseFileException : Exception
{
    public CaseFileException() { }

    public CaseFileException(string message) : base(message) { }

    public CaseFileException(string message, Exception inner) : base(message, inner) { }
}
