using System.ComponentModel;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>A test that is counted as skipped.</summary>
public sealed class SkippedStoreTest : XunitTestCase
{
    [EditorBrowsable(EditorBrowsableState.Never)]
    [Obsolete("For the test framework, which fills it afterwards.")]
    public SkippedStoreTest() { }

    public SkippedStoreTest(IMessageSink sink, ITestFrameworkDiscoveryOptions options, ITestMethod test)
        : base(sink, options.MethodDisplayOrDefault(), options.MethodDisplayOptionsOrDefault(), test) { }

    protected override string GetSkipReason(IAttributeInfo factAttribute) => StoreSkip.Why(TestMethod)!;
}
