namespace DxAssistant.Cases.Log;

/// <summary>An entry is not as it was written down; the message says what of it.</summary>
internal sealed class AlteredException : Exception
{
    public AlteredException() { }

    public AlteredException(string message) : base(message) { }

    public AlteredException(string message, Exception inner) : base(message, inner) { }
}
