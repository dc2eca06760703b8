// What the library takes and gives, as text. It clones plain data only.
globalThis.structuredClone = value => JSON.parse(JSON.stringify(value));
function place(asked) {
  const { boxes, lines } = JSON.parse(asked);
  const graph = new dagre.graphlib.Graph();
  graph.setGraph({ rankdir: 'LR', nodesep: 10, ranksep: 80 });
  for (const { id, width, height } of boxes) graph.setNode(id, { width, height });
  for (const { from, to } of lines) graph.setEdge(from, to, {});
  dagre.layout(graph);
  return JSON.stringify(boxes.map(({ id }) => ({ id, x: graph.node(id).x, y: graph.node(id).y })));
}
