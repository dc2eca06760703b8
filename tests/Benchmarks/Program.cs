using DxAssistant.Benchmarks;
using DxAssistant.Benchmarks.Load;

if (args is [BareAppender.Command, var file])
    return await BareAppender.ServeAsync(file);

var groups = args.Length == 0
    ? BenchmarkGroups.All
    : [.. BenchmarkGroups.All.Where(group => args.Contains(group.Name))];
if (args.FirstOrDefault(name => BenchmarkGroups.All.All(group => group.Name != name)) is { } unknown)
{
    var names = string.Join(", ", BenchmarkGroups.All.Select(group => group.Name));
    Console.Error.WriteLine($"there is no group {unknown}: name some of {names}, or none for all");
    return 2;
}

var results = ResultFolder.OfThisRun();
foreach (var group in groups)
    group.Run(results);
return 0;
