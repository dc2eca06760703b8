namespace DxAssistant.Server.Commands.Asking;

/// <summary>A request on a line lacks something or asks for what there is not; the message says what would be
/// taken.</summary>
internal sealed class RequestException : Exception
{
    public RequestException() { }

    public RequestException(string message) : base(message) { }

    public RequestException(string message, Exception inner) : base(message, inner) { }
}
