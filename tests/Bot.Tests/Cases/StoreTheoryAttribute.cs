using Xunit.Sdk;

namespace DxAssistant.Bot.Tests.Cases;

/// <inheritdoc cref="StoreFactAttribute"/>
[XunitTestCaseDiscoverer("DxAssistant.Bot.Tests.Cases.StoreTheoryDiscoverer", "DxAssistant.Bot.Tests")]
[AttributeUsage(AttributeTargets.Method)]
public sealed class StoreTheoryAttribute : TheoryAttribute;
