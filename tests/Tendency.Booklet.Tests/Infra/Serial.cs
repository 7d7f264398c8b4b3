// ScottPlot's font list and render state are shared by the process: printing tests do not run beside one another.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
