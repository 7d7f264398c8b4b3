using Tendency.SampleCharts;

// Writes the generated part of sample-logs: `dotnet run --project tests/Tendency.SampleCharts -- sample-logs`.
if (args is not [var root])
{
    Console.Error.WriteLine("usage: Tendency.SampleCharts FOLDER   (writes the sample charts below FOLDER)");
    return 2;
}

foreach (var (path, bytes) in SampleFiles.All())
{
    var file = Path.Combine(root, path);
    Directory.CreateDirectory(Path.GetDirectoryName(file)!);
    File.WriteAllBytes(file, bytes);
    Console.WriteLine(file);
}

return 0;
