using Tendency.Simulations.Studies;

// Seeded studies, slow, run by hand: dotnet run --project tests/Tendency.Simulations -c Release -- STUDY [COUNT] [SEED]
switch (args)
{
    case ["audit", .. var rest]:
        AuditStudy.Run(rest.Length > 0 ? int.Parse(rest[0]) : 20, rest.Length > 1 ? int.Parse(rest[1]) : 1, [.. rest.Skip(2)], Console.Out);
        return 0;
    case ["fuzz", .. var rest]:
        return FuzzStudy.Run(rest.Length > 0 ? int.Parse(rest[0]) : 5000, rest.Length > 1 ? int.Parse(rest[1]) : 1, Console.Out);
    case ["tells", "null", .. var rest]:
        TellStudies.Null(rest.Length > 0 ? int.Parse(rest[0]) : 500, rest.Length > 1 ? int.Parse(rest[1]) : 1, Console.Out);
        return 0;
    case ["tells", "planted", .. var rest]:
        TellStudies.Planted(rest.Length > 0 ? int.Parse(rest[0]) : 500, rest.Length > 1 ? int.Parse(rest[1]) : 1, Console.Out);
        return 0;
    case ["tells", "situations", .. var rest]:
        TellStudies.Situations(rest.Length > 0 ? int.Parse(rest[0]) : 200, rest.Length > 1 ? int.Parse(rest[1]) : 1, Console.Out);
        return 0;
    case ["fronts", .. var rest]:
        FrontStudy.Run(rest.Length > 0 ? int.Parse(rest[0]) : 2000, rest.Length > 1 ? int.Parse(rest[1]) : 1, Console.Out, rest.Length > 2 ? int.Parse(rest[2]) : 150);
        return 0;
    case ["coverage", "pages", .. var rest]:
        PageCoverageStudy.Run(rest.Length > 0 ? int.Parse(rest[0]) : 250, rest.Length > 1 ? int.Parse(rest[1]) : 1, Console.Out);
        return 0;
    case ["coverage", .. var rest]:
        CoverageStudy.Run(rest.Length > 0 ? int.Parse(rest[0]) : 250, rest.Length > 1 ? int.Parse(rest[1]) : 1, Console.Out);
        return 0;
    case ["guess", "season" or "habits", .. var rest]:
        GuessStudy.Run(args[1] == "habits", rest.Length > 0 ? int.Parse(rest[0]) : 32, rest.Length > 1 ? int.Parse(rest[1]) : 1, Console.Out);
        return 0;
    case ["guess", "charts", var folder, .. var rest]:
        GuessStudy.Run(folder, rest.Length > 0 ? int.Parse(rest[0]) : 4, Console.Out);
        return 0;
    case ["season", var folder, .. var rest]:
        SeasonStudy.Run(folder, rest.Length > 0 ? int.Parse(rest[0]) : 4, Console.Out);
        return 0;
    case ["steady", .. var rest]:
        SteadyStudy.Run(rest.Length > 0 ? int.Parse(rest[0]) : 400, rest.Length > 1 ? int.Parse(rest[1]) : 1, Console.Out);
        return 0;
    default:
        Console.Error.WriteLine("Studies: audit CHARTS SEED [columns left out]; fuzz FILES SEED; tells null CHARTS SEED; tells planted CHARTS SEED; tells situations CHARTS SEED; fronts OPPONENTS SEED [runs]; coverage OPPONENTS SEED; coverage pages CHARTS SEED; guess season|habits TEAMS SEED; guess charts FOLDER [games learned from, 0 = all others]; steady CHARTS SEED; season FOLDER [GAMES].");
        return 2;
}
