using Xunit.Sdk;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>A test of every store; skipped, and counted so, where the store of its class cannot be had.</summary>
[XunitTestCaseDiscoverer("DxAssistant.Bot.Tests.Cases.StoreFactDiscoverer", "DxAssistant.Bot.Tests")]
[AttributeUsage(AttributeTargets.Method)]
public sealed class StoreFactAttribute : FactAttribute;
