namespace DxAssistant.Knowledge.Search;

/// <summary>Tells what someone means to do from what someone reports.</summary>
internal static class Intent
{
    private static readonly WordPattern Meant = new("""
        how, can, could, should, may, want, wanna, lets, let me, ok to, okay to, safe to, need to, able, possible,
        way to, please, just, would, help me, tell me, show me, going to, i will, i do, what if, do i, is it, rather,
        gotta, have to, might, why not, what wire, which wire, where do, best, trick, easiest, quick, instead, so it,
        so i, so that, until, for tonight, for now, to get, in order
        """);

    /// <summary>Orders begin so.</summary>
    private static readonly string[] Orders =
        ["put", "use", "stick", "run", "leave", "keep", "take", "get", "make", "let", "set", "place", "lay", "do", "go", "start", "pull", "cut",
         "open", "measure", "work", "connect", "wire", "skip", "remove", "fill", "add", "tell", "show", "wrap", "blow", "link",
         "replace", "swap", "double", "touch", "lick", "clean", "spray", "unplug", "seal", "braze", "screw", "adjust", "fake", "force", "turn",
         "loosen", "crack", "weld", "glue", "empty", "climb", "heat", "warm", "charge", "disconnect", "change", "top", "mix", "purge", "short"];

    private static readonly WordPattern Reported = new("""
        found, someone, somebody, previous, last guy, last tech, was, were, been, had, prior, they, he, installer,
        customer, owner had, looks like, is already, guy before, other company, other tech
        """);

    private static readonly WordPattern PastActs = new("""
        bypassed, jumpered, jumped, bridged, defeated, disabled, overridden, looped, taped, linked, shorted, tricked,
        wedged, removed, mixed, bypassing, bypass, jumper, filled, charged, put
        """);

    /// <summary>Whether someone means to do what stands at a place: asked for, or said as an order.</summary>
    public static bool Shows(RequestWords request, int at) => at <= 1 || Orders.Contains(request[0]) || Meant.IsIn(request);

    /// <summary>Whether the message asks for something, or says it as an order.</summary>
    public static bool IsAsked(RequestWords request) => Orders.Contains(request[0]) || Meant.IsIn(request);

    /// <summary>Whether the message only reports what someone did ("found the float switch bypassed").</summary>
    public static bool IsReport(RequestWords request) =>
        Reported.IsIn(request) && PastActs.IsIn(request) && !Meant.IsIn(request);
}
