/** A page of the help: what it is about, and what it says; `shows` prints what the program itself knows. */
export type HelpPage = {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly says: readonly string[];
  readonly shows?: "rules" | "glossary" | "keys" | "cautions";
};

/** Pages in the order of the contents. */
export const helpPages: readonly HelpPage[] = [
  {
    id: "start",
    title: "Starting a route",
    about: "Open a file, take the demo route, or begin with lists",
    says: [
      "A route is one file. It can be copied, mailed and put on a stick; nothing else belongs to it.",
      "Begin with a list of poles, then living units, then what else is on the poles and under the spans. Then lay out terminals.",
      "Every edit is written as it is made: there is no save button. Copies are kept beside the file on their own.",
    ],
  },
  {
    id: "diagram",
    title: "The strand diagram",
    about: "Move about, choose, and change the route by hand",
    says: [
      "Turn the wheel to zoom about the pointer; drag empty ground to move it. 0 shows the whole route.",
      "Click chooses, Shift and click adds, Alt and click goes through what lies on each other. Shift and drag chooses with a box: what it encloses, with Alt what it touches, with Ctrl (Cmd) beside what is chosen already. Escape clears.",
      "Arrow keys walk from pole to pole, with Alt over terminals too, and nudge chosen terminals, coils, closures, crossings, structures and ground points, or several chosen poles and houses; Shift makes ten steps of one.",
      "What is dragged is drawn to its usual places, told beside it; hold Ctrl (Cmd) to have it free. Type a length while dragging to have it exact. A pole is dragged only once it is chosen.",
      "E arranges what is chosen: evenly spaced, at one distance from the pole, in a straight line, or a terminal at every so many poles. It is shown before it is done. F turns a terminal to the other side of its pole, F4 does the last thing again to what is chosen now.",
      "Tools at the left edge add by hand. While a line goes on from a pole, point where it goes and type the length of the span.",
      "A guy is a thin tail from its pole with a bar where the anchor stands; a building is a face with hatching behind it, a sign a thick face on posts, either one broken across the strand where the line passes over it; a small cross on the strand is a measured point of the ground.",
      "A terminal hangs under the strand by two short hangers; each tick is a port: filled is used, hollow is spare, hatched is reserved.",
    ],
  },
  {
    id: "chosen",
    title: "The side panel",
    about: "What is chosen, its figures and its findings",
    says: [
      "The panel tells what is chosen: its fields, what it touches and what the rules say about it. With nothing chosen it tells the route.",
      "Lengths are taken as people write them: 36 in, 10' 6\", 3 m. They are shown in the units of the route.",
      "Names that are underlined lead to the thing they name.",
      "A pole and an attachment tell the heights for our strand at which everything is kept at once, what bars the others, and what others would have to move where no height is left, the cheapest plan first. One press records a plan, one undo takes it back.",
    ],
  },
  {
    id: "tables",
    title: "Tables",
    about: "Rows of one kind, as in a spreadsheet",
    says: [
      "Every kind of row has its table. Choosing a row chooses it on the diagram too.",
      "A block copied from a spreadsheet can be pasted; cells that cannot be read are marked with the reason. One undo takes the whole paste back.",
    ],
  },
  {
    id: "profile",
    title: "The profile",
    about: "The line seen from the side, height and clearance at every station",
    says: [
      "One cable's path from its feed end, or strand that has no cable yet: ground, poles, everybody's attachments and wires, our line in every case, what it crosses and how much each asks for.",
      "Where a span is wide on the page its least clearance is dimensioned, and how far a building or sign stands beside the line: a dotted ring is that distance seen from its end.",
      "The wheel zooms about the pointer, with Shift only along, with Alt only up; drag empty paper to move it. 0 shows the whole path, 2 the span one stands in.",
      "Rest the pointer on a station, or walk there by left and right: the card tells the clearance in each case against its limit.",
      "Drag an attachment up or down, ours or another's: heights and clearances are told while it moves, and letting go is one edit. Up and down choose an attachment by keys, Enter types its height.",
      "Beside the name of the cable or strand stands how tight the strand of the span at hand is strung: change it, and the line hangs anew at once. All changes until one leaves the field are one step of undo.",
      "Where the standards ask for extreme wind, extreme ice or a worker on the strand, the line is drawn in those cases too, blown out as it hangs. They are cases of strength: no clearance is held against them.",
      "The cold case is the temperature of the loading district without ice. The wires of others hang at their measured sag, else at the assumed one of the standards.",
    ],
  },
  {
    id: "traces",
    title: "Traces",
    about: "What a reflectometer showed, held against the fiber as drawn",
    says: [
      "Bring in the .sor files of a reflectometer: each is kept in the route file and matched to its fiber by what the instrument was told and by its name. Where neither says which fiber or end it is, it is asked.",
      "The fiber is drawn from the hub, whatever end the trace was taken from, so that both directions and all wavelengths lie over each other. Rings are places drawn along it, hollow where nothing shows; a triangle is an event where nothing is drawn, a diamond the end of a broken fiber, with the place on the strand and how far off it may be.",
      "Choose an event and the diagram shows its place; choose a terminal, closure or pole and the mark goes there.",
      "A click puts mark A, the key B the other: distance and loss between them stand below. The wheel zooms, with Shift only along, with Alt only up; drag to move, 0 shows all of it, up and down walk from event to event.",
      "A distance is held against the landmark before it, so that a coil not as drawn shifts one section alone. The launch lead is found by itself; where it is as long as the fiber it must be told.",
      "Losses are judged as the mean of both directions where both were taken; limits are standards of the company.",
    ],
  },
  {
    id: "layout",
    title: "Laying out",
    about: "Where terminals hang and whom they serve, the cost against its bound",
    says: [
      "Lay out terminals strings strand and cable where there are none, then decides where each terminal hangs, which port serves which living unit, and which fibers feed it. It keeps drop reach and spare ports, and leads no drop over what it may not pass.",
      "It looks for the least cost of terminals and drops at catalogue prices. Beside the cost stands a bound: no layout of the route costs less, whoever makes it. Where both meet the layout is proven the cheapest, else the gap says how much dearer than the cheapest it can be at most. Stop keeps the best so far.",
      "Pin what is decided. A nail beside a terminal or on a house says that it stays, a slash through a pole that nothing hangs beside it; sheets carry the same signs. A layout works round them, and is proven among what they leave open.",
      "Whom it could not serve is listed with the reason; Next and Previous go from one to the next on the diagram. Mend the reason, such as a pole that is closed or a strand that is missing, and lay out again.",
      "After an edit the figures say that they are past. They hold again when the route is laid out again.",
    ],
  },
  {
    id: "whatIf",
    title: "What if",
    about: "Try other standards, prices or models before deciding",
    says: [
      "Write another number of spare ports, drop reach or price, or take a terminal model out, and try it. The route stays as it is.",
      "Both layouts stand side by side, figure by figure, with what the other has more or less. Whom it would not serve is told with the reasons.",
      "Show it on the diagram draws the other layout beside the present one: dashed bars over the strand are terminals that would hang anew or become another model, struck through are those that would go, dashed lines are drops that would run otherwise. Press a count to choose them.",
      "Take it whole, with its standards and prices, or choose poles on the diagram and take it along them alone: standards then stay as they are. Either is one edit, and one undo takes it back.",
      "A trial belongs to the route it was tried on. After an edit it is past: try it again.",
    ],
  },
  {
    id: "balance",
    title: "The balance",
    about: "Ports, fibers and hub outputs, terminal by terminal",
    says: [
      "Every terminal from the hub on is a line, every port a cell: filled is used, hatched is reserved, dashed is kept free by the standard, hollow may still be given. The letters and chips tell which tube it opens and which fibers it takes.",
      "Drag a unit to another terminal, or mark several with Ctrl (Cmd) or Shift and a click and drag them together. While they are in the hand every line says how far it is or why it cannot take them; below stands what letting go would come to: drop cable, reach, fill and light. Letting go is one edit.",
      "By keys: arrows walk, Space marks, Enter takes up, up and down choose the terminal, Enter lets go, Escape puts back.",
      "Plus and minus reserve ports of a terminal for whoever comes later, such as a vacant lot; below stands for whom. No layout, evening out or mend gives a reserved port away, and its terminal stays where it hangs.",
      "Even out moves drops between terminals until all are filled as nearly alike as reach, pins, spares and reservations allow. It says what it would come to before it is done.",
      "Fibers by tube shows each buffer tube down its cable and who opens it where; hub outputs by leg, what each leg of a hub's splitter lights.",
    ],
  },
  {
    id: "closeout",
    title: "The closeout",
    about: "How far the route has come, what was read, what is to be mended",
    says: [
      "Every terminal is a row, in order along the route, with all that is built since the one before it: poles, spans, bonds, closures, its ports and drops. A box fills as a thing comes on: designed is a dash, then issued, built, tested, accepted. A row stands as far as the least of its things. The diagram carries the same signs; a line under a box says that readings are missing.",
      "Press a row, or Enter on it, to write down what was read there: first who read it, then from field to field by Enter. Any unit the trade writes is understood. Emptying a field takes the reading back. What was drawn, or the light expected at that very port, stands beside the field.",
      "A reading that deviates is a finding, here and among the findings. With heights, offsets and coils as they were read, every clearance and separation of the design is worked out again; only what is not found on the drawing, or is worse than there, is found as built. There are three ways: rework puts it on the punch list, waive accepts it with a reason, draw it as built changes the design, which is then held against its own rules. Where no edit could bring the design there, as with light or a ground, the third way is not offered. A figure read anew takes back what was accepted of the former.",
      "The punch list holds what is to be mended, from findings and by hand for what is chosen on the diagram: who does it, until when, a photo before and after, and how it was done. Photos are scaled down and kept in the route file.",
      "Sheath marks are read at both ends of a cable and before and after each opening. Between two marks stand the sheath used, as drawn, stored or missing; a figure out of order or with two digits exchanged is pointed out. The sheath counts feet where the route is in feet, else metres.",
    ],
  },
  {
    id: "light",
    title: "The light of the route",
    about: "What is left of the class's limits, and what a meter should show",
    says: [
      "Light by terminal, in the balance, lists every terminal from the hub on with what its worst unit has left of the largest loss its optical class bears, the company's margin taken off. Arrows tell the way: up to the hub, down to the unit.",
      "The diagram is inked by the same scale, the figure beside each terminal. Where a unit has no light at all it says dark; where less is lost than the class asks for, the receiver gets too much light, and by how much is told with a plus.",
      "Beside the list stands the chosen terminal port by port: loss from the hub's output at both wavelengths of the class, least and most, and the power a meter should show before the drop is plugged in. What arrives in service at the unit and at the hub stands behind.",
      "Powers come from the optical class. Where it does not say what the hub or the unit launches, no power is told, and the loss holds all the same. Press a margin to see how it comes about.",
      "A terminal's sheet and the port and drop schedule print the expected light at every port beside an empty field for the light measured.",
    ],
  },
  {
    id: "findings",
    title: "Findings",
    about: "What the rules have to say, and how to mend it",
    says: [
      "The rules look at the route after every edit. An error means it cannot be built or run so; a warning asks for a decision; a note is worth knowing.",
      "Press a finding to go to its place. The buttons beside it mend it; undo takes that back.",
      "A finding that is right to leave can be waived with a reason and a name, which print on the drawings.",
      "No finding does not mean that nothing is wrong. It means that the rules of the rule book, against the limits set, found nothing.",
    ],
  },
  {
    id: "history",
    title: "The history",
    about: "What was done, by whom and when, and the way back",
    says: [
      "Every edit is listed by its name, the newest first, also those of earlier days and of other people.",
      "Undo to here takes back everything after a line, step by step; what was taken back is listed too and can be made again.",
      "A view, a choice and a panel are no edits: undo leaves them alone.",
    ],
  },
  {
    id: "copies",
    title: "Copies and backups",
    about: "What is kept beside the file, and how to put it back",
    says: [
      "Dated copies are kept in a folder beside the route file. A copy more can be made at any time.",
      "Putting one back makes a copy of the present route first, so that nothing is lost.",
      "A copy saved elsewhere is a route of its own: edits to one do not reach the other.",
    ],
  },
  {
    id: "import",
    title: "Bringing in lists",
    about: "Poles, living units, attachments, and what stands under and beside the line, from files",
    says: [
      "Choose what the file lists, then the file. Its columns are matched by their headings; any can be chosen by hand.",
      "The first rows are shown as they will be read, and every bad row with its line, column, value and what would be accepted. Nothing is taken in until you press the button.",
      "A list of ground points, structures or sags names each span by its two poles; distances run from the first named, and left and right are seen from there. A guy's bearing is clockwise from north.",
    ],
  },
  {
    id: "sheets",
    title: "Sheets and printing",
    about: "The drawing set as it will print",
    says: [
      "Preview shows the set as it will print: cover, strand plan, profiles, stringing tables, guys, the pole permit list, a sheet for each terminal, fiber charts, schedules, bill and findings.",
      "Choose the sheets and have them drawn to a PDF or printed, each a page of its own at true size. O on the diagram shows the sheet of the chosen terminal alone.",
      "Draw the set gives one PDF. Paper is white whatever the colours of the screen, and every sign can be read in black and white.",
      "Sheets say “preliminary” until the revision they show is issued and approved, and “not for construction” while an error is open that nobody waived.",
    ],
  },
  {
    id: "revisions",
    title: "Revisions",
    about: "What was issued, what has changed since, who approved it",
    says: [
      "Issuing a revision freezes the drawings as they are under a letter. However the route is edited after, its sheets can be shown and drawn as they were.",
      "What has changed since the last revision is listed in words; on the plan it stands in a cloud with a triangle that names the revision. What was changed and changed back is not told.",
      "A revision is approved by name; one that must not be used any more is made void with a reason. Its letter is not given again.",
    ],
  },
  {
    id: "packets",
    title: "Field packets",
    about: "What a crew takes along, and what it brings back",
    says: [
      "A packet is one file for a phone or a laptop: open it in a browser, no network is needed. It has the job card of each terminal and a field for everything to be read; lengths may be typed in any unit. What is far from the drawing is asked again at once.",
      "What is typed is kept in that browser at every change. The button at its foot writes the file for the office; it can be written again later, with corrections.",
      "Bring the files back with the button here, or let them fall onto the window: several crews, in any order, twice the same does no harm. Undo takes a whole packet back.",
      "Where a reading was changed here as well, or two crews read otherwise, both stand side by side with who and when, until somebody keeps one or takes the other. What could not be taken in is listed with the reason.",
    ],
  },
  {
    id: "signOff",
    title: "Sign-off",
    about: "What must be so before the route is signed for, and what a signature proves",
    says: [
      "The route is signed for as built, tested and accepted. Each stage has gates: errors among the findings mended or waived, everything built, readings taken, light tested, the punch list empty. What is missing is listed, and a press goes there.",
      "A signature holds a digest of every row as it was signed. It stays on record; undo does not reach past it.",
      "Once accepted, the route is frozen: nothing is edited until somebody opens it again with a name and a reason. What was signed for is then issued under the next letter, so that sheets and lists tell what changed since.",
      "Every entry of the journal carries the hash of all before it. The chain, and the rows behind every signature, are verified whenever the file is opened. A file that does not fit opens to be looked at only, with the first thing that was changed; nothing of it is lost, and a backup may be put back.",
      "This proves that nobody changed the file by other means and left it so. There is no secret key in it: whoever works out every hash anew can forge a file. Print the digest on the paper that is signed; then the paper proves the file.",
    ],
  },
  {
    id: "settings",
    title: "Standards and catalogues",
    about: "The company's own limits and the things it buys",
    says: [
      "Each value says where it comes from and how far it was read: seen, from memory, practice, or computed.",
      "Standards travel inside the route file. They can be exported as a template and taken into another route.",
      "What the drawings have of the company is among them: its general notes, a line of the title block, the paper, and which kinds of sheets a set has.",
    ],
  },
  {
    id: "finder",
    title: "Finding anything",
    about: "One field for poles, addresses, terminals, actions and help",
    says: [
      "Press Ctrl+K (Cmd+K on a Mac) and type any part of a name. Parts can come in any order, and a slip of the hand is forgiven.",
      "Enter goes to the first line. Actions that cannot run now say why.",
    ],
  },
  { id: "keys", title: "Keys", about: "Every key, by topic; keys can be changed", says: [], shows: "keys" },
  {
    id: "rules",
    title: "Rule book",
    about: "Every rule, what it looks at and where its limit comes from",
    says: ["Printed from the rules themselves: what is written here is what is checked."],
    shows: "rules",
  },
  { id: "glossary", title: "Words of the trade", about: "What the words mean", says: [], shows: "glossary" },
  {
    id: "cautions",
    title: "Cautions",
    about: "What to keep in mind on the pole and in the office",
    says: [],
    shows: "cautions",
  },
  {
    id: "numbers",
    title: "How numbers are computed",
    about: "Sag, tension, clearance, lengths and light",
    says: [
      "Lengths on the ground: from the poles' coordinates on the ellipsoid; the route's own grid keeps them within survey accuracy over its extent.",
      "Weight of a span: strand, cable, lashing wire and, under a loading district, ice and wind on the whole bundle, with the code's constant where it has one.",
      "Sag: a uniform load between two supports, y = w x (L − x) / 2H; w is weight along the span, L its length, H the horizontal tension.",
      "Tension at another temperature or load: by the change of state of the strand, from its stringing sag, stiffness and expansion.",
      "Clearance: height of the line at the crossing, less the height of the surface there, under the condition the clearance set names.",
      "Heights for our strand at a pole: every bound solved by itself, h = p + (K − c) / s; p is the height now, K what must be kept, c what is kept at the place that decides, s the part of a rise at the pole that reaches there. Moves of others: fewest first, then the least distance.",
      "Drops: the straight way from port to living unit, with what the company adds for the house.",
      "Light: fiber by length, splices, connections and splitters, with the company's margin; a splitter of N legs takes 10 log N and its excess.",
      "Inside, every figure is kept in SI units and none is rounded; rounding happens where it is shown.",
    ],
  },
];
