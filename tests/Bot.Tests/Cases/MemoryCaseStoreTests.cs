using DxAssistant.Cases;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class MemoryCaseStoreTests : CaseStoreTests
{
    protected override Task<ICaseStore> MakeAsync(TimeProvider clock) =>
        Task.FromResult<ICaseStore>(new MemoryCaseStore(clock));
}
