using System.Diagnostics;
using System.Globalization;
using Tendency.Tests.Shared;

// Whole runs of a built executable on the sample charts, each in a process of its own: what a coach waits for, and what it takes in memory.
//   dotnet publish src/Tendency -c Release -r linux-x64 --self-contained -o published
//   dotnet run -c Release --project tests/Tendency.Benchmarks -- published/tendency [RUNS]
if (args.Length is not (1 or 2) || !File.Exists(args[0]))
{
    Console.Error.WriteLine("usage: Tendency.Benchmarks EXECUTABLE [RUNS]");
    return 2;
}

var runs = args.Length == 2 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 7;
var charts = Checkout.SampleLogs("port-halden");
var scratch = Directory.CreateTempSubdirectory("tendency-benchmark-").FullName;
(string Name, string[] Arguments)[] commands =
[
    ("tables", ["tables", charts, "--by", "back_side", "--of", "call"]),
    ("audit", ["audit", charts]),
    ("tells", ["tells", charts]),
    ("guess", ["guess", charts]),
    ("fronts", ["fronts", charts]),
    ("booklet", ["booklet", charts, "-o", Path.Combine(scratch, "booklet.pdf")]),
];

Console.WriteLine($"{Environment.ProcessorCount} processors, {Environment.Version}, {runs} runs each");
Console.WriteLine("command   median s   least s   peak MB");
foreach (var (name, arguments) in commands)
{
    var seconds = new double[runs];
    for (var run = 0; run < runs; run++)
    {
        seconds[run] = Run(args[0], [.. arguments, "--quiet"]);
    }

    // Looking at a run's memory takes time from it: a run of its own.
    long peak = 0;
    _ = Run(args[0], [.. arguments, "--quiet"], process => peak = Math.Max(peak, process.PeakWorkingSet64));

    Array.Sort(seconds);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-8} {seconds[runs / 2],9:0.00} {seconds[0],9:0.00} {peak / 1e6,9:0}"));
}

Directory.Delete(scratch, recursive: true);
return 0;

static double Run(string executable, string[] arguments, Action<Process>? look = null)
{
    const int Often = 20;
    var start = new ProcessStartInfo(executable, arguments) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
    var watch = Stopwatch.StartNew();
    using var process = Process.Start(start)!;
    var output = process.StandardOutput.ReadToEndAsync();
    var error = process.StandardError.ReadToEndAsync();
    while (!process.WaitForExit(look is null ? Timeout.Infinite : Often))
    {
        try
        {
            process.Refresh();
            look!(process);
        }
        catch (InvalidOperationException)
        {
            // It ended between two looks.
        }
    }

    _ = (output.Result, error.Result);
    return watch.Elapsed.TotalSeconds;
}
