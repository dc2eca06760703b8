using System.Globalization;
using System.Xml.Linq;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Bot.Tests.Server.Workbench;

/// <summary>The room a mark of a drawing takes.</summary>
internal sealed record PictureRoom(string What, double Left, double Top, double Right, double Bottom)
{
    public static PictureRoom Of(XElement rect)
    {
        double x = Number(rect, "x"), y = Number(rect, "y");
        return new PictureRoom("box", x, y, x + Number(rect, "width"), y + Number(rect, "height"));
    }

    /// <summary>In the widest of the faces that a page may fall back to.</summary>
    public static PictureRoom OfText(XElement text)
    {
        // A drawing ends each text with a space for those who copy it; it takes no room.
        string words = text.Value.Trim();
        double size = Number(text, "font-size"), x = Number(text, "x"), y = Number(text, "y");
        double wide = text.Attribute("font-weight") is null
            ? TextSize.Width(words, (int)size)
            : TextSize.Bold(words, (int)size);
        double left =
            (string?)text.Attribute("text-anchor") switch { "middle" => x - wide / 2, "end" => x - wide, _ => x };
        return text.Attribute("transform") is not null
            ? new PictureRoom(words, x - 0.75 * size, y - wide, x + 0.2 * size, y)
            : new PictureRoom(words, left, y - 0.75 * size, left + wide, y + 0.2 * size);
    }

    public static void AssertApart(PictureRoom[] all)
    {
        for (int one = 0; one < all.Length; one++)
            for (int other = one + 1; other < all.Length; other++)
                Assert.False(all[one].Covers(all[other]), $"{all[one]} covers {all[other]}");
    }

    private bool Covers(PictureRoom other) =>
        Left + 1 < other.Right && other.Left + 1 < Right && Top + 1 < other.Bottom && other.Top + 1 < Bottom;

    private static double Number(XElement element, string name) =>
        double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);
}
