using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Html;

/// <summary>The one style sheet: black, white, the printed grays; the same ranks of type as on paper, enlarged to a screen.</summary>
internal static class HtmlStyle
{
    /// <summary>The rules, and Inter itself (SIL OFL 1.1) cut to the letters we print, so that the file needs no font of the reader's.</summary>
    public static string Sheet { get; } = Font(400, Face.Regular) + Font(700, Face.Bold) + Rules;

    private const string Rules = """

        :root { color-scheme: light }
        body { margin: 0 auto; max-width: 800px; padding: 1.5rem; background: #fff; color: #000; font: 15px/1.4 Inter, system-ui, "Segoe UI", Roboto, Arial, sans-serif; font-variant-numeric: tabular-nums }
        header { border-bottom: 2px solid #000; margin-bottom: 1.5rem } header img { float: right; max-height: 48px }
        h1 { font-size: 2.4rem; line-height: 1.1; margin: 0 } h1 span { font-weight: 400 }
        h2 { font-size: 1.45rem; line-height: 1.2; margin: .2rem 0 .4rem; text-wrap: balance } p { text-wrap: pretty } h3 { font-size: 1rem; margin: 1.6rem 0 .4rem; border-top: 1px solid #000; padding-top: .3rem } h3 small, h4 small { font-weight: 400; margin-left: .5rem } h4 { font-size: .95rem; margin: 0; border-top: 1px solid #000; padding-top: .2rem } h4.marked { border-top-width: 2.5px } h4 { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: baseline } h4 small { margin-left: 0 }
        section { border-top: 1px solid #000; margin-top: 3rem; padding-top: .5rem } section.sheet { overflow-x: auto; width: min(1120px, 94vw); margin-left: calc(50% - min(560px, 47vw)) }
        .name { margin: 0; font-size: .85rem } .deck { margin: 0 0 1rem } .note { font-size: .82rem } .lead { font-size: 1.3rem } .call { font-size: 1.1rem }
        nav ul { list-style: none; padding: 0; margin: .2rem 0 } nav li { border-top: 1px solid #bababa; padding: .3rem 0 } nav a { display: grid; grid-template-columns: 13rem 1fr; gap: .8rem; text-decoration: none } nav a:hover { text-decoration: underline }
        a { color: inherit }
        table { border-collapse: collapse; margin: .5rem 0 1rem; font-size: .87rem } .scroll { overflow-x: auto }
        caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%) }
        th, td { text-align: left; vertical-align: middle; padding: .15rem .7rem .15rem 0; font-weight: 400 } thead th { font-weight: 700; vertical-align: bottom; border-bottom: 1px solid #000 } thead th small { font-weight: 400; display: block }
        tbody tr { border-bottom: .5px solid #000 } tbody th { min-width: 4.5rem } tr.total { border-bottom-width: 2px } tr.rule, tr.group { border-top: 2px solid #000 } .bare tbody tr { border: 0 }
        .right { text-align: right } .center { text-align: center } td.mark { padding-top: 0; padding-bottom: 0 } .of { white-space: nowrap } .counts { display: grid; grid-template-columns: 1fr auto; gap: 0 .6rem; font-size: .93em; white-space: nowrap } td small, th small { font-size: .88em }
        svg { display: block; overflow: visible } svg text { font-family: inherit } svg .backed { paint-order: stroke; stroke: #fff; stroke-width: 3px; stroke-linejoin: round }
        .figures { display: flex; flex-wrap: wrap; gap: 1rem; margin: 1rem 0 } .figures div { flex: 1 1 110px; border-left: 1px solid #000; padding-left: .5rem } .figures strong { display: block; font-size: 1.9rem; line-height: 1.15 }
        ol.claims { padding-left: 1.6rem } ol.claims > li { border-top: .5px solid #000; padding: .6rem 0 } ol.claims > li::marker { font-weight: 700; font-size: 1.2rem } .claim { display: flex; gap: 1rem; justify-content: space-between; align-items: center } .claim strong.say { display: block; font-size: 1.1rem }
        .panels { display: grid; grid-template-columns: repeat(var(--across), 1fr); gap: 1.2rem 16px; margin: 1rem 0 } .panels > div { min-width: 0 } .panels table { font-size: .78rem; margin: 0 } .panels th, .panels td { padding-right: .35rem } .panels p { margin: .2rem 0 } .beside { display: flex; flex-wrap: wrap; gap: 0 1.2rem } .beside > div { min-width: 150px }
        .empty { border: 1px solid #000; padding: .5rem .8rem } figure { margin: .6rem 0; overflow-x: auto }
        details { font-size: .82rem } summary { cursor: pointer } .plays { columns: 3 12rem; margin: .2rem 0 .6rem; padding-left: 1rem }
        footer { border-top: 1px solid #000; margin-top: 3rem; font-size: .82rem }
        @media (max-width: 680px) { .panels { grid-template-columns: 1fr } nav a { grid-template-columns: 1fr; gap: 0 } .claim { flex-wrap: wrap } }
        @media print { body { max-width: none; padding: 0; font-size: 10pt } section.sheet { width: auto; margin-left: 0 } section { break-before: page } nav { break-before: page } tr, figure, .panels > div, .claim { break-inside: avoid } h3, h4 { break-after: avoid } details:not([open]) { display: none } @page { margin: 15mm 13mm 13mm 19mm } }

        """;

    private static string Font(int weight, Face face) =>
        $"@font-face {{ font-family: Inter; font-weight: {weight}; src: url(data:font/ttf;base64,{Convert.ToBase64String(face.Slim.Drawing)}) }}\n";
}
