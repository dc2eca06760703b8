using Xunit.Abstractions;
using Xunit.Sdk;

namespace DxAssistant.Bot.Tests.Cases;

/// <inheritdoc cref="StoreFactAttribute"/>
public sealed class StoreTheoryDiscoverer(IMessageSink sink) : TheoryDiscoverer(sink)
{
    public override IEnumerable<IXunitTestCase> Discover(
        ITestFrameworkDiscoveryOptions discoveryOptions, ITestMethod testMethod, IAttributeInfo theoryAttribute) =>
        StoreSkip.Why(testMethod) is null
            ? base.Discover(discoveryOptions, testMethod, theoryAttribute)
            : [new SkippedStoreTest(DiagnosticMessageSink, discoveryOptions, testMethod)];
}
