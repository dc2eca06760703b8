namespace DxAssistant.Benchmarks.Growing;

/// <summary>
/// What one size of a library costs. Times in milliseconds, memory in megabytes of the managed heap after a full
/// collection.
/// </summary>
/// <param name="Compile">Compiling all pages.</param>
/// <param name="Edit">Compiling again after an edit of one page; median.</param>
/// <param name="Memory">The compiled library, without its texts of pages.</param>
/// <param name="Index">Making what a conversation needs: search, planner's tables, phrases.</param>
/// <param name="IndexMemory">What that takes.</param>
/// <param name="Words">A turn in which a complaint is typed that nobody typed before; median.</param>
/// <param name="Tap">A turn in which an answer is tapped, a plan made when one is needed; median.</param>
/// <param name="SlowestTap">99 of 100 of these took no longer.</param>
internal sealed record LibraryPoint(
    int Faults, int Pages, double Compile, double Edit, double Memory, double Index, double IndexMemory, double Words,
    double Tap, double SlowestTap);
