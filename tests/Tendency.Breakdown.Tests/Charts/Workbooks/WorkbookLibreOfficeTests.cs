using System.Diagnostics;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Charts.Workbooks;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Tests.Charts.Workbooks;

/// <summary>The workbook as another program opens and saves it.</summary>
public class WorkbookLibreOfficeTests
{
    [LibreOfficeFact]
    public void Write_OpenedAndSavedByLibreOffice_LosesNothing()
    {
        var folder = Directory.CreateTempSubdirectory("tendency-workbook-").FullName;
        try
        {
            var snaps = ChartedWorkbook.Snaps();
            File.WriteAllBytes(Path.Combine(folder, "chart.xlsx"), ChartedWorkbook.Of(WorkbookWriter.Write(Glossary.BuiltIn), snaps));
            Convert(folder, "ods", "chart.xlsx");
            File.Delete(Path.Combine(folder, "chart.xlsx"));
            Convert(folder, "xlsx", "chart.ods");

            var read = ChartReader.Read([new ChartSource("chart.xlsx", () => File.OpenRead(Path.Combine(folder, "chart.xlsx")))], WeekPlan.Default, Glossary.BuiltIn);
            ChartedWorkbook.AssertReadBack(snaps, read);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Convert(string folder, string to, string file)
    {
        // A profile of its own: two runs that share one refuse each other.
        string[] arguments = [$"-env:UserInstallation=file://{folder}/profile", "--headless", "--convert-to", to, "--outdir", folder, Path.Combine(folder, file)];
        using var run = Process.Start(new ProcessStartInfo(LibreOfficeFactAttribute.Program!, arguments) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var said = run.StandardOutput.ReadToEndAsync();
        var complained = run.StandardError.ReadToEndAsync();
        Assert.True(run.WaitForExit(TimeSpan.FromMinutes(2)), "LibreOffice did not end.");
        Assert.True(run.ExitCode == 0, said.Result + complained.Result);
    }
}

/// <summary>A test that is skipped, and says so, where LibreOffice is not installed.</summary>
public sealed class LibreOfficeFactAttribute : FactAttribute
{
    public LibreOfficeFactAttribute()
    {
        if (Program is null)
        {
            Skip = "LibreOffice (soffice) is not installed.";
        }
    }

    public static string? Program { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, "soffice")).FirstOrDefault(File.Exists);
}
