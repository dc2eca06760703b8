using System.CommandLine;
using DxAssistant.Server.Commands;

var folder = new Argument<string?>("folder")
{
    Description = "The folder of the pages; content when not given.",
    Arity = ArgumentArity.ZeroOrOne,
};
folder.Validators.Add(result =>
{
    if (result.Tokens.Any(token => token.Value.StartsWith('-')))
    {
        result.AddError($"there is no option {result.Tokens[0].Value}");
    }
});
var check = new Command("check", "Say everything that is wrong with the pages.") { folder };
check.SetAction(call => ContentCheck.Run(call.GetValue(folder), Console.Out, Console.Error));
var root = new RootCommand("Troubleshooting assistant for ductless heat pumps.")
{
    new Command("content", "Work on the pages.") { check },
};
ParseResult call = root.Parse(args);
if (call.Errors.Count > 0)
{
    Console.Error.WriteLine(call.Errors[0].Message);
    return 2;
}

return call.Invoke();
