using Xunit.Abstractions;
using Xunit.Sdk;

namespace DxAssistant.Bot.Tests.Cases;

/// <inheritdoc cref="StoreFactAttribute"/>
public sealed class StoreFactDiscoverer(IMessageSink sink) : FactDiscoverer(sink)
{
    protected override IXunitTestCase CreateTestCase(
        ITestFrameworkDiscoveryOptions discoveryOptions, ITestMethod testMethod, IAttributeInfo factAttribute) =>
        StoreSkip.Why(testMethod) is null
            ? base.CreateTestCase(discoveryOptions, testMethod, factAttribute)
            : new SkippedStoreTest(DiagnosticMessageSink, discoveryOptions, testMethod);
}
