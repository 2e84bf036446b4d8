// Package coverage compares a shot list with its recipe: what viewers need to
// see and no shot shows, and how often the camera changes its setup.
//
//   - Of finds the steps without a shot, the cues that nobody films, ingredients
//     that are not laid out and a hero that is missing; Draft gives the shots
//     that would show them;
//   - Count counts the setup changes of an order of filming, and finds the fewest
//     that the cooking order allows.
//
// A shot is tied to a step, to a whole component, or to the episode. What a shot
// shows is taken from its kind and its tie; whether the cue is in the frame at
// the right moment is seen only in the frame.
package coverage
