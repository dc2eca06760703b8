using Xunit.Abstractions;

[assembly: TestCollectionOrderer("DxAssistant.Browser.Tests.LongestFirst", "DxAssistant.Browser.Tests")]

namespace DxAssistant.Browser.Tests;

/// <summary>Begins with what takes longest, so that it does not go on alone when all else is over.</summary>
public sealed class LongestFirst : ITestCollectionOrderer
{
    public IEnumerable<ITestCollection> OrderTestCollections(IEnumerable<ITestCollection> testCollections) =>
        testCollections.OrderBy(group => group.DisplayName != KeptPhone.Name)
            .ThenBy(group => !group.DisplayName.EndsWith(nameof(EngineTests), StringComparison.Ordinal))
            .ThenBy(group => group.DisplayName, StringComparer.Ordinal);
}
