using DxAssistant.Cases;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Serving;

/// <summary>The content that answers now. Replaced as a whole when the pages change.</summary>
internal sealed record InUse(IResponder Responder, TitleBook Titles);
