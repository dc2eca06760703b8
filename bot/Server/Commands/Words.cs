using System.Text;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Server.Commands;

/// <summary>How quantities are named in answers to programs.</summary>
internal static class Words
{
    /// <summary><c>GaugePressure</c> as <c>gauge-pressure</c>.</summary>
    public static string Kebab(string name)
    {
        var words = new StringBuilder();
        foreach (char c in name)
        {
            if (char.IsUpper(c) && words.Length > 0) words.Append('-');
            words.Append(char.ToLowerInvariant(c));
        }

        return words.ToString();
    }

    /// <summary>The symbol of the unit in which a kind of quantity is given: the one that converts to itself, by its
    /// shortest symbol.</summary>
    public static string SiUnit(QuantityKind kind) =>
        Unit.All.Where(unit => unit.Kind == kind && unit.ToSi(1) == 1 && unit.ToSi(0) == 0)
            .MinBy(unit => unit.Symbol.Length)!.Symbol;
}
