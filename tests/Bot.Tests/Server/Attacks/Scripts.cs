namespace DxAssistant.Bot.Tests.Server.Attacks;

/// <summary>
/// Words that would run as a program where they are not written as words: in HTML, in an attribute, in an address, in a
/// drawing, in a header, in a table, in a template.
/// </summary>
/// <remarks>
/// Source: OWASP Cross Site Scripting Prevention and CSV Injection cheat sheets (kinds of contexts, from memory); the
/// texts are our own.
/// </remarks>
internal static class Scripts
{
    /// <summary>Stands in each of them.</summary>
    public const string Mark = "dxprobe";

    public static string[] All { get; } =
    [
        "<script>dxprobe()</script>", "<ScRiPt src=//dxprobe.example></sCrIpT >", "<script\n>dxprobe()</script\t>",
        "<img src=x onerror=dxprobe()>", "<svg/onload=dxprobe()>",
        "<svg><animate onbegin=dxprobe() attributeName=x></svg>", "\"><script>dxprobe()</script>",
        "' onmouseover='dxprobe()", "\" autofocus onfocus=dxprobe() x=\"",
        "<a href=\"javascript:dxprobe()\">x</a>", "[x](javascript:dxprobe())", "![x](data:text/html,dxprobe)",
        "<iframe srcdoc=\"&lt;script&gt;dxprobe()\">", "<base href=//dxprobe.example>",
        "<meta http-equiv=refresh content=0;url=//dxprobe>", "<style>*{background:url(//dxprobe)}</style>",
        "</textarea><script>dxprobe()</script>", "<!--><script>dxprobe()</script>-->",
        "<math><mtext><table><mglyph><style><img src=x onerror=dxprobe()>", "{{dxprobe()}}", "${dxprobe()}",
        "`;dxprobe();`", "\\u003cscript\\u003edxprobe()", "&lt;script&gt;dxprobe()",
        "%3Cscript%3Edxprobe()", "＜script＞dxprobe()", "dxprobe\u2028()", "=cmd|'/c dxprobe'!A0", "+dxprobe(1)",
        "-dxprobe(1)", "@dxprobe(1)", "=HYPERLINK(\"//dxprobe\")",
    ];
}
