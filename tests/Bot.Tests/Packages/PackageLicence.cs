using System.Xml.Linq;

namespace DxAssistant.Bot.Tests.Packages;

/// <summary>The licence that a package states in its own files.</summary>
internal static class PackageLicence
{
    /// <param name="folders">Where packages are kept on this machine.</param>
    /// <returns>
    /// An SPDX expression, or a name for what has none; null when the package names no more than an address.
    /// </returns>
    public static string? Of(IEnumerable<string> folders, string name, string version)
    {
        string? folder = folders.Select(root => Path.Combine(root, name.ToLowerInvariant(), version.ToLowerInvariant()))
            .FirstOrDefault(Directory.Exists);
        if (folder is null) return null;
        XElement? stated = XDocument.Load(Path.Combine(folder, name.ToLowerInvariant() + ".nuspec"))
            .Descendants().FirstOrDefault(element => element.Name.LocalName == "license");
        return stated is null ? null
            : stated.Attribute("type")?.Value == "expression"
            ? stated.Value
            : InText(File.ReadAllText(Path.Combine(folder, stated.Value)));
    }

    private static string InText(string text) =>
        text.Contains("Apache License", StringComparison.Ordinal) ? "Apache-2.0"
        : text.Contains("Permission is hereby granted, free of charge", StringComparison.Ordinal) ? "MIT"
        : text.Contains("Public Domain", StringComparison.Ordinal) ? "public domain"
        : "not known";
}
