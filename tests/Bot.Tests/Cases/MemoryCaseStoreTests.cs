using DxAssistant.Cases;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class MemoryCaseStoreTests : CaseStoreTests
{
    protected override ICaseStore Make(TimeProvider clock) => new MemoryCaseStore(clock);
}
