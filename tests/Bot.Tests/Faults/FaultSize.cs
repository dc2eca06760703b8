using System.Globalization;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>How long faults are looked for: little unless the environment says otherwise.</summary>
internal static class FaultSize
{
    /// <summary><c>DX_KILLS</c>: how often a program is killed, or a disk is lost.</summary>
    public static int Kills { get; } = Given("DX_KILLS", 2);

    /// <summary>
    /// <c>DX_COPIES</c>: how often a disk is lost, where that is not as often as programs are killed.
    /// </summary>
    public static int CopiesOr(int kills) => Given("DX_COPIES", kills);

    /// <summary><c>DX_CUTS</c>: how often the network is held up, and how often it is closed.</summary>
    public static int Cuts { get; } = Given("DX_CUTS", 1);

    /// <summary><c>DX_SEED</c>: what moments and conversations are drawn from.</summary>
    public static int Seed { get; } = Given("DX_SEED", 20261126);

    private static int Given(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture,
            out int value) ? value : usual;
}
