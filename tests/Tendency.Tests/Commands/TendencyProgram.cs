using System.Diagnostics;
using System.Reflection;

namespace Tendency.Tests.Commands;

/// <summary>What a run of the built program left behind.</summary>
internal sealed record Ran(int ExitCode, string Output, string Error)
{
    public string[] ErrorLines => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}

/// <summary>Runs the built program in a folder of its own, as a shell would.</summary>
internal sealed class TendencyProgram : IDisposable
{
    private static readonly string s_program = typeof(TendencyProgram).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(data => data.Key == "Program").Value!;

    public string Folder { get; } = Directory.CreateTempSubdirectory("tendency-test-").FullName;

    public string Write(string name, string text)
    {
        var file = Path.Combine(Folder, name);
        _ = Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
        return file;
    }

    public Ran Run(params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo("dotnet", [s_program, .. arguments])
        {
            WorkingDirectory = Folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Ran(process.ExitCode, output, error.Result);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
