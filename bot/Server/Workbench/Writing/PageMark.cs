using System.Security.Cryptography;
using System.Text;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>The mark of a text: another text has another one.</summary>
internal static class PageMark
{
    /// <returns>Empty when there is no page.</returns>
    public static string Of(string? text) =>
        text is null ? "" : Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
