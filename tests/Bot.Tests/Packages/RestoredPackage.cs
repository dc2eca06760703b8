using System.Collections.Immutable;

namespace DxAssistant.Bot.Tests.Packages;

/// <summary>A package as it was restored for the projects of the repository.</summary>
/// <param name="Licence">As the package itself states it; null when it names no more than an address.</param>
/// <param name="GoesOut">Whether it is part of what users run, not only of building and testing.</param>
/// <param name="IsAsked">Whether a project asks for it by name.</param>
/// <param name="Parents">What it came along with, in ordinal order.</param>
internal sealed record RestoredPackage(
    string Name, string Version, string? Licence, bool GoesOut, bool IsAsked, ImmutableArray<string> Parents);
