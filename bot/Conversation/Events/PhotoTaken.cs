namespace DxAssistant.Conversation.Events;

/// <summary>A photo was added to the job. Its bytes are kept beside the log, under their hash.</summary>
/// <param name="Hash">SHA-256 of the bytes as they are kept, in lower-case hexadecimal.</param>
/// <param name="Type">The media type, found from the bytes themselves.</param>
/// <param name="Shows">What is on it, such as <c>nameplate</c>.</param>
/// <param name="Unit">The unit of the job.</param>
public sealed record PhotoTaken(string By, string Hash, string Type, long Bytes, string Shows, int Unit)
    : AsideEvent(By);
