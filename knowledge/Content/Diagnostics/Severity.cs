namespace DxAssistant.Knowledge.Content;

/// <summary>How bad a diagnostic is. Only an error keeps the content from being used.</summary>
public enum Severity
{
    Warning,
    Error,
}
