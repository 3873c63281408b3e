package shimwright.bench.web;
