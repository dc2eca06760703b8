using System.Text;
using DxAssistant.Server.Commands;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
return await CommandLine.RunAsync(args, new Streams(Console.In, Console.Out, Console.Error));
