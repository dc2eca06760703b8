namespace DxAssistant.Knowledge.Pictures;

/// <summary>A picture as a file of its own, which brings the inks along that a page would give it.</summary>
public static class PictureFile
{
    // The inks of the sheet on light paper and on dark; a test holds them to those of the page.
    private const string Light =
        "--paper:#fcfdf8;--ink:#10201a;--pale-ink:#3f4f46;--rule:#c3cfc4;--edge:#5d6d63;--pen:#0b3aa0;--sound:#0a5230;"
        + "--unsound:#8f1710;--band:#cfe3d4;--glass:#0c1210;--lit:#ffd35c;--unlit:#4b5a51";

    private const string Dark =
        "--paper:#121a16;--ink:#ecf3ec;--pale-ink:#bccabf;--rule:#34443b;--edge:#8fa396;--pen:#a9caff;--sound:#86e3b0;"
        + "--unsound:#ffb3a6;--band:#274637;--glass:#050807;--lit:#ffd35c;--unlit:#46564c";

    private const string Looks =
        "svg{background:var(--paper);color:var(--ink);fill:none;stroke:currentColor;stroke-width:2;"
        + "stroke-linecap:round;stroke-linejoin:round;font:500 14px 'DejaVu Sans',sans-serif}"
        + "text{fill:currentColor;stroke:none}.ink{color:var(--ink)}.soft{color:var(--pale-ink)}"
        + ".live,.off{color:var(--unsound)}.probe-a,.found{color:var(--pen)}.probe-b{color:var(--sound)}"
        + ".paper{fill:var(--paper);stroke:none}.thin{color:var(--rule);stroke-width:1}"
        + ".edge{color:var(--edge);stroke-width:1}.band{fill:var(--band);stroke:none}"
        + ".glass{fill:var(--glass);stroke:var(--edge)}.lit{color:var(--lit);fill:currentColor;stroke:none}"
        + ".dark{color:var(--unlit);stroke-width:1}";

    /// <summary>The drawing with its own styles: light, and dark where the reader prefers it on a screen.</summary>
    /// <param name="svg">One SVG element as a reply carries it.</param>
    public static string Of(string svg)
    {
        int inside = svg.IndexOf('>', StringComparison.Ordinal) + 1;
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg[..inside]
            + $"<style>:root{{{Light}}}@media screen and (prefers-color-scheme:dark){{:root{{{Dark}}}}}{Looks}</style>"
            + svg[inside..] + "\n";
    }
}
