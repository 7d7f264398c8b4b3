using System.Globalization;
using Tendency.SampleCharts;
using Tendency.SampleCharts.Charts;

namespace Tendency.Simulations.Charts;

/// <summary>Puts single mistakes of every kind a tired charter makes into a correct chart, far enough apart to be told from each other.</summary>
internal sealed class MistakePlanter(ChartSheet sheet, Chance chance)
{
    private static readonly Dictionary<string, int> s_column = ChartColumns.All.Select((c, i) => (c.Header, i)).ToDictionary(c => c.Header, c => c.i);

    private readonly List<(int Key, string[] Cells)> _rows = [.. sheet.Rows.Select((row, i) => (i, (string[])row.Clone()))];
    private readonly List<PlantedMistake> _planted = [];

    public static IReadOnlyList<string> Kinds { get; } =
    [
        "down", "distance", "ball_on digit", "ball_on half", "ball_on ten", "gain sign", "gain digit", "gain swap", "missing snap", "missing snap renumbered", "duplicate", "duplicate renumbered",
        "rows swapped", "contents swapped", "hash", "quarter", "clock", "formation", "scheme", "coverage", "sack", "incomplete", "interception", "scramble", "personnel", "call", "touchdown", "play number",
        "margin", "penalty effect", "penalty on", "series", "down 5", "distance 0", "half flag", "side word",
    ];

    /// <summary>Plants mistakes of the given kinds in turn, one for every so many rows.</summary>
    public (ChartSheet Chart, IReadOnlyList<PlantedMistake> Planted, IReadOnlyList<int> Keys) Plant(IReadOnlyList<string> kinds, int every)
    {
        var used = new HashSet<int>();
        for (var n = 0; n < sheet.Rows.Count / every; n++)
        {
            var kind = kinds[n % kinds.Count];
            for (var attempt = 0; attempt < 400; attempt++)
            {
                var at = chance.Between(3, _rows.Count - 4);
                if (Enumerable.Range(-4, 9).Any(d => used.Contains(_rows[Math.Clamp(at + d, 0, _rows.Count - 1)].Key)))
                {
                    continue;
                }

                if (TryPlant(kind, at) is { } mistake)
                {
                    _planted.Add(mistake);
                    _ = used.Add(mistake.Key);
                    break;
                }
            }
        }

        return (sheet with { Rows = [.. _rows.Select(row => row.Cells)] }, _planted, [.. _rows.Select(row => row.Key)]);
    }

    private PlantedMistake? TryPlant(string kind, int at)
    {
        var cells = _rows[at].Cells;
        string At(string column) => cells[s_column[column]];
        var numbers = int.TryParse(At("gain"), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var gain);
        if (At("down") == "try")
        {
            return null;
        }

        switch (kind)
        {
            case "down":
                return Put("down", chance.One(["1", "2", "3", "4"]));
            case "distance":
                return At("distance") == "goal" ? null : Put("distance", Digit(At("distance")));
            case "ball_on digit":
                return At("ball_on") == "50" ? null : Put("ball_on", At("ball_on")[..4] + Digit(At("ball_on")[4..], 49));
            case "ball_on half":
                return At("ball_on") == "50" ? null : Put("ball_on", (At("ball_on")[..3] == "own" ? "opp" : "own") + At("ball_on")[3..]);
            case "ball_on ten":
                return At("ball_on") == "50" || Number(At("ball_on")[4..]) is not (>= 1 and <= 38) ? null : Put("ball_on", At("ball_on")[..4] + (Number(At("ball_on")[4..]) + 10));
            case "gain sign":
                return numbers && gain != 0 ? Put("gain", Text(-gain)) : null;
            case "gain digit":
                return numbers && At("result") is "rush" or "complete" ? Put("gain", Digit(At("gain"))) : null;
            case "gain swap":
                return numbers && gain > 9 && gain % 10 != gain / 10 ? Put("gain", Text((gain % 10 * 10) + (gain / 10))) : null;
            case "missing snap" or "missing snap renumbered":
                return SameSeries(at - 1, at + 1) && SameSeries(at, at + 1) ? Remove(kind, at) : null;
            case "duplicate" or "duplicate renumbered":
                return Duplicate(kind, at);
            case "rows swapped":
                if (!SameSeries(at, at + 1) || At("down") == "try")
                {
                    return null;
                }

                (_rows[at], _rows[at + 1]) = (_rows[at + 1], _rows[at]);
                return new(kind, _rows[at].Key, "", "");
            case "contents swapped":
                if (!SameSeries(at, at + 1))
                {
                    return null;
                }

                foreach (var header in (string[])["down", "distance", "ball_on", "gain", "result", "call", "run_scheme", "pass_concept", "hash"])
                {
                    (cells[s_column[header]], _rows[at + 1].Cells[s_column[header]]) = (_rows[at + 1].Cells[s_column[header]], cells[s_column[header]]);
                }

                return new(kind, _rows[at].Key, "", "");
            case "hash":
                return SameSeries(at - 1, at) && _rows[at - 1].Cells[s_column["result"]] == "incomplete" ? Put("hash", chance.One(["L", "M", "R"])) : null;
            case "quarter":
                return Put("quarter", chance.One(["1", "2", "3", "4"]));
            case "clock":
                var colon = At("clock").IndexOf(':');
                var minutes = Number(At("clock")[..colon]);
                return Put("clock", $"{Math.Clamp(minutes + chance.One([-3, -2, 2, 3]), 0, 14)}{At("clock")[colon..]}");
            case "formation":
                return At("formation").Length < 5 ? null : Put("formation", Misspell(At("formation")));
            case "scheme":
                return At("run_scheme").Length < 5 ? null : Put("run_scheme", Misspell(At("run_scheme")));
            case "coverage":
                return At("coverage").Length < 5 ? null : Put("coverage", Misspell(At("coverage")));
            case "sack":
                return At("result") == "sack" && gain < 0 ? Put("gain", Text(-gain)) : null;
            case "incomplete":
                return At("result") == "incomplete" ? Put("gain", Text(chance.Between(3, 12))) : null;
            case "interception":
                return At("result") == "interception" ? Put("gain", Text(chance.Between(10, 30))) : null;
            case "scramble":
                return At("result") == "scramble" && At("call") == "pass" ? Put("call", "run") : null;
            case "personnel":
                return At("attached") is "L" or "R" or "both" ? Put("personnel", At("personnel")[..1] + "0") : null;
            case "call":
                return At("call") is "run" or "pass" && At("result") is not "scramble" ? Put("call", At("call") == "run" ? "pass" : "run") : null;
            case "touchdown":
                return At("touchdown") == "yes" ? Put("touchdown", "") : null;
            case "play number":
                return Put("play", Digit(At("play")));
            case "margin":
                return SameSeries(at - 1, at) && SameSeries(at, at + 1) ? Put("margin", Text(Number(At("margin")) + chance.One([-7, 7, 3, 10]))) : null;
            case "penalty effect":
                return At("penalty_effect") is "replay" or "added on" or "declined" && SameSeries(at, at + 1) ? Put("penalty_effect", chance.One(["replay", "added on", "declined", "offset"])) : null;
            case "penalty on":
                return At("penalty_effect") is "replay" or "added on" && SameSeries(at, at + 1) ? Put("penalty_on", At("penalty_on") == "offense" ? "defense" : "offense") : null;
            case "series":
                return Put("series", Text(Number(At("series")) + chance.One([-1, 1])));
            case "down 5":
                return SameSeries(at - 1, at) ? Put("down", chance.One(["5", "22", "7"])) : null;
            case "distance 0":
                return SameSeries(at - 1, at) ? Put("distance", chance.One(["0", "100", "x"])) : null;
            case "half flag":
                return At("penalty_effect") is "replay" ? Put("penalty_on", "") : null;
            case "side word":
                return At("run_side").Length > 0 ? Put("run_side", At("run_side") == "R" ? chance.One(["Rigt", "rihgt"]) : chance.One(["lef", "Letf"])) : null;
            default:
                throw new ArgumentOutOfRangeException(nameof(kind), kind, "unknown kind");
        }

        PlantedMistake? Put(string column, string value)
        {
            var right = cells[s_column[column]];
            if (value == right)
            {
                return null;
            }

            cells[s_column[column]] = value;
            return new(kind, _rows[at].Key, column, right);
        }
    }

    private PlantedMistake Remove(string kind, int at)
    {
        _rows.RemoveAt(at);
        if (kind == "missing snap renumbered")
        {
            Shift(at, -1);
        }

        return new(kind, _rows[at].Key, "", "");
    }

    private PlantedMistake Duplicate(string kind, int at)
    {
        _rows.Insert(at + 1, (100_000 + _rows[at].Key, (string[])_rows[at].Cells.Clone()));
        if (kind == "duplicate renumbered")
        {
            Shift(at + 1, 1);
        }

        return new(kind, _rows[at + 1].Key, "", "");
    }

    private void Shift(int from, int by)
    {
        var game = _rows[from].Cells[0];
        for (var at = from; at < _rows.Count && _rows[at].Cells[0] == game; at++)
        {
            _rows[at].Cells[s_column["play"]] = Text(Number(_rows[at].Cells[s_column["play"]]) + by);
        }
    }

    private bool SameSeries(int one, int two) =>
        one >= 0 && two < _rows.Count && ((string[])["game", "offense", "series"]).All(header => _rows[one].Cells[s_column[header]] == _rows[two].Cells[s_column[header]]);

    private string Digit(string number, int most = 99)
    {
        for (; ; )
        {
            var sign = number.StartsWith('-') ? "-" : "";
            var digits = number[sign.Length..].ToCharArray();
            digits[chance.Between(0, digits.Length - 1)] = (char)('0' + chance.Between(0, 9));
            var text = sign + new string(digits);
            if (text != number && digits[0] != '0' && Math.Abs(Number(text)) <= most)
            {
                return text;
            }
        }
    }

    private string Misspell(string word)
    {
        var at = chance.Between(1, word.Length - 2);
        while (word[at] == ' ' || word[at + 1] == ' ' || word[at] == word[at + 1])
        {
            at = chance.Between(1, word.Length - 2);
        }

        return chance.Between(0, 2) switch
        {
            0 => word.Remove(at, 1),
            1 => word.Insert(at, word[at].ToString()),
            _ => string.Concat(word.AsSpan(0, at), [word[at + 1], word[at]], word.AsSpan(at + 2)),
        };
    }

    private static int Number(string text) => int.Parse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
