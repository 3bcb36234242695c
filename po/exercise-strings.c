/* SPDX-License-Identifier: CC-BY-4.0 */
/* Made by data/exercise-strings.py from data/exercises. Only for translators: this file is never compiled. */
/* Translators: ankle-rocks: name */
N_("Ankle rocks")
/* Translators: ankle-rocks: another name */
N_("Knee-over-toe rocks")
/* Translators: ankle-rocks: to spare knees, in lower case */
N_("standing, hands on a wall")
/* Translators: ankle-rocks: to spare ankles, in lower case */
N_("smaller rocks")
/* Translators: ankle-rocks: setup */
N_("Kneel on one knee, the other foot flat in front, hands resting on that thigh.")
/* Translators: ankle-rocks: cues 1 */
N_("Front heel stays down")
/* Translators: ankle-rocks: cues 2 */
N_("Knee glides over the toes")
/* Translators: ankle-rocks: cues 3 */
N_("Ease back, no bouncing")
/* Translators: ankle-rocks: cues 4 */
N_("Toes point straight ahead")
/* Translators: ankle-rocks: fault */
N_("Heel lifting? Rock only as far as it stays down.")
/* Translators: ankle-rocks: easier */
N_("Standing, hands on a wall, with smaller rocks.")
/* Translators: ankle-rocks: harder */
N_("Longer pause, each time at the furthest point.")
/* Translators: anti-rotation-press: name */
N_("Anti-rotation press")
/* Translators: anti-rotation-press: setup */
N_("Stand side-on to the anchor, band in both hands at your chest, knees soft.")
/* Translators: anti-rotation-press: cues 1 */
N_("Press straight out from your chest")
/* Translators: anti-rotation-press: cues 2 */
N_("Don't let the band turn you")
/* Translators: anti-rotation-press: cues 3 */
N_("Pause with your arms long")
/* Translators: anti-rotation-press: cues 4 */
N_("Bring it back slowly")
/* Translators: anti-rotation-press: fault */
N_("Shoulders turning towards the anchor? Step closer and press more slowly.")
/* Translators: anti-rotation-press: easier */
N_("One step closer, so the band pulls less.")
/* Translators: anti-rotation-press: harder */
N_("Step further out, and pause longer with arms long.")
/* Translators: arm-circles: name */
N_("Arm circles")
/* Translators: arm-circles: to spare shoulders, in lower case */
N_("small circles with bent elbows")
/* Translators: arm-circles: setup */
N_("Stand tall, knees soft, arms stretched out to the sides at shoulder height.")
/* Translators: arm-circles: cues 1 */
N_("Circle from the shoulders")
/* Translators: arm-circles: cues 2 */
N_("Start small, then grow")
/* Translators: arm-circles: cues 3 */
N_("Back long, no arching")
/* Translators: arm-circles: cues 4 */
N_("Halfway, change direction")
/* Translators: arm-circles: fault */
N_("Shoulders hunching up? Lower the arms a little.")
/* Translators: arm-circles: easier */
N_("Shoulder rolls, with the arms hanging loose.")
/* Translators: arm-circles: harder */
N_("Full circles, arms brushing past your ears.")
/* Translators: ball-knee-squeeze: name */
N_("Ball knee squeeze")
/* Translators: ball-knee-squeeze: another name */
N_("Seated ball squeeze")
/* Translators: ball-knee-squeeze: to spare hips, in lower case */
N_("softer ball, gentle squeeze")
/* Translators: ball-knee-squeeze: to spare pressure, in lower case */
N_("short squeezes, breathing out")
/* Translators: ball-knee-squeeze: setup */
N_("Sit tall near the front of the chair, feet flat, a soft ball between your knees.")
/* Translators: ball-knee-squeeze: cues 1 */
N_("Squeeze the ball as you breathe out")
/* Translators: ball-knee-squeeze: cues 2 */
N_("Hold for two counts")
/* Translators: ball-knee-squeeze: cues 3 */
N_("Ease off slowly, keep the ball")
/* Translators: ball-knee-squeeze: cues 4 */
N_("Sit tall throughout")
/* Translators: ball-knee-squeeze: fault */
N_("Holding your breath? Count aloud as you squeeze.")
/* Translators: ball-knee-squeeze: easier */
N_("Gentle squeeze, about half your strength.")
/* Translators: ball-knee-squeeze: harder */
N_("Heels up, and squeeze from there.")
/* Translators: ball-roll-out: name */
N_("Ball roll-out")
/* Translators: ball-roll-out: another name */
N_("Kneeling ball roll")
/* Translators: ball-roll-out: to spare lower-back, in lower case */
N_("roll out only a hand's width")
/* Translators: ball-roll-out: to spare knees, in lower case */
N_("fold the mat under your knees")
/* Translators: ball-roll-out: to spare shoulders, in lower case */
N_("shorter roll, elbows bent")
/* Translators: ball-roll-out: setup */
N_("Kneel on a mat, forearms on a large ball in front of you, back long.")
/* Translators: ball-roll-out: cues 1 */
N_("Roll the ball slowly away")
/* Translators: ball-roll-out: cues 2 */
N_("Ribs in, squeeze your buttocks")
/* Translators: ball-roll-out: cues 3 */
N_("Stop before your back sags")
/* Translators: ball-roll-out: cues 4 */
N_("Draw your elbows in to return")
/* Translators: ball-roll-out: fault */
N_("Lower back sagging? Roll out only half as far.")
/* Translators: ball-roll-out: easier */
N_("No ball, holding a plank on forearms and knees.")
/* Translators: ball-roll-out: harder */
N_("Pause far out, for one slow breath.")
/* Translators: band-chest-press: name */
N_("Band chest press")
/* Translators: band-chest-press: another name */
N_("Standing band press")
/* Translators: band-chest-press: to spare shoulders, in lower case */
N_("elbows lower, press a shorter way")
/* Translators: band-chest-press: setup */
N_("Fix the band at chest height behind you. Hold both ends, one foot forward.")
/* Translators: band-chest-press: cues 1 */
N_("Press straight forward from your chest")
/* Translators: band-chest-press: cues 2 */
N_("Tummy firm, body still")
/* Translators: band-chest-press: cues 3 */
N_("Shoulders low, wrists straight")
/* Translators: band-chest-press: cues 4 */
N_("Come back slowly")
/* Translators: band-chest-press: fault */
N_("Band pulling you backwards? Lean in slightly and firm your tummy.")
/* Translators: band-chest-press: easier */
N_("Nearer the anchor, so the band pulls less.")
/* Translators: band-chest-press: harder */
N_("Step forward, or bring your feet together.")
/* Translators: band-curl: name */
N_("Band curl")
/* Translators: band-curl: another name */
N_("Band biceps curl")
/* Translators: band-curl: to spare wrists, in lower case */
N_("turn your palms in, thumbs up")
/* Translators: band-curl: setup */
N_("Stand on the middle of the band, feet hip-width, an end in each hand, palms forward.")
/* Translators: band-curl: cues 1 */
N_("Elbows stay by your ribs")
/* Translators: band-curl: cues 2 */
N_("Curl up, wrists straight")
/* Translators: band-curl: cues 3 */
N_("Let the band down slowly")
/* Translators: band-curl: fault */
N_("Band bending the wrists back? Keep your knuckles in line.")
/* Translators: band-curl: easier */
N_("One foot, so the band stretches less.")
/* Translators: band-curl: harder */
N_("Feet wider, so the band stretches more.")
/* Translators: band-face-pull: name */
N_("Band face pull")
/* Translators: band-face-pull: another name */
N_("Band pull to the face")
/* Translators: band-face-pull: to spare shoulders, in lower case */
N_("pull lower, towards your chest")
/* Translators: band-face-pull: setup */
N_("Fix the band at face height. Hold both ends and step back, arms long.")
/* Translators: band-face-pull: cues 1 */
N_("Pull towards your eyebrows")
/* Translators: band-face-pull: cues 2 */
N_("Elbows high and wide")
/* Translators: band-face-pull: cues 3 */
N_("Finish with your hands beside your ears")
/* Translators: band-face-pull: cues 4 */
N_("Return slowly, shoulders low")
/* Translators: band-face-pull: fault */
N_("Elbows dropping? Use a lighter band and lead with your elbows.")
/* Translators: band-face-pull: easier */
N_("Pull-apart only, with the band at chest height.")
/* Translators: band-face-pull: harder */
N_("Step back, and pause with hands by your ears.")
/* Translators: band-glute-bridge: name */
N_("Band glute bridge")
/* Translators: band-glute-bridge: another name */
N_("Banded bridge")
/* Translators: band-glute-bridge: to spare lower-back, in lower case */
N_("lift only halfway")
/* Translators: band-glute-bridge: setup */
N_("Loop the band above your knees. Lie on your back, knees bent, feet hip-width.")
/* Translators: band-glute-bridge: cues 1 */
N_("Press your knees gently outwards")
/* Translators: band-glute-bridge: cues 2 */
N_("Lift through your heels")
/* Translators: band-glute-bridge: cues 3 */
N_("Squeeze your buttocks at the top")
/* Translators: band-glute-bridge: cues 4 */
N_("Knees stay wide as you lower")
/* Translators: band-glute-bridge: fault */
N_("Knees pulled together? Press them out before you lift.")
/* Translators: band-glute-bridge: easier */
N_("No band, lift and lower the same way.")
/* Translators: band-glute-bridge: harder */
N_("March it, band tight, lift one foot at a time.")
/* Translators: band-overhead-press: name */
N_("Band overhead press")
/* Translators: band-overhead-press: another name */
N_("Band shoulder press")
/* Translators: band-overhead-press: to spare shoulders, in lower case */
N_("press slightly forward, forehead height only")
/* Translators: band-overhead-press: to spare lower-back, in lower case */
N_("one foot back, tummy firm")
/* Translators: band-overhead-press: to spare pressure, in lower case */
N_("lighter band, keep breathing")
/* Translators: band-overhead-press: setup */
N_("Stand on the band, feet hip-width apart, ends held at your shoulders, palms forward.")
/* Translators: band-overhead-press: cues 1 */
N_("Press straight up, close to your face")
/* Translators: band-overhead-press: cues 2 */
N_("Tummy and buttocks firm")
/* Translators: band-overhead-press: cues 3 */
N_("Wrists straight above your elbows")
/* Translators: band-overhead-press: cues 4 */
N_("Lower slowly, keeping the band tight")
/* Translators: band-overhead-press: fault */
N_("Back arching? Step one foot back and press slightly less high.")
/* Translators: band-overhead-press: easier */
N_("One foot on, so the band pulls less.")
/* Translators: band-overhead-press: harder */
N_("Feet wider, so the band pulls more.")
/* Translators: band-pull-apart: name */
N_("Band pull-apart")
/* Translators: band-pull-apart: another name */
N_("Band chest-height pull")
/* Translators: band-pull-apart: to spare shoulders, in lower case */
N_("hands a little lower, palms up")
/* Translators: band-pull-apart: setup */
N_("Stand tall, holding a band in front of you at chest height, arms straight.")
/* Translators: band-pull-apart: cues 1 */
N_("Pull the band apart, wide and even")
/* Translators: band-pull-apart: cues 2 */
N_("Shoulder blades together, shoulders low")
/* Translators: band-pull-apart: cues 3 */
N_("Keep your arms at chest height")
/* Translators: band-pull-apart: cues 4 */
N_("Come back slowly")
/* Translators: band-pull-apart: fault */
N_("Back arching? Breathe out and firm your tummy gently.")
/* Translators: band-pull-apart: easier */
N_("Hands wider, so the band pulls less.")
/* Translators: band-pull-apart: harder */
N_("Hands closer, with a pause when wide.")
/* Translators: band-row: name */
N_("Band row")
/* Translators: band-row: another name */
N_("Standing band row")
/* Translators: band-row: to spare grip, in lower case */
N_("loop the band around your hands")
/* Translators: band-row: setup */
N_("Fix the band at chest height. Step back, arms long, until it is just tight.")
/* Translators: band-row: cues 1 */
N_("Pull your elbows back past your ribs")
/* Translators: band-row: cues 2 */
N_("Squeeze your shoulder blades together")
/* Translators: band-row: cues 3 */
N_("Stand tall, knees soft")
/* Translators: band-row: cues 4 */
N_("Let the band return slowly")
/* Translators: band-row: fault */
N_("Leaning back? Stand tall, ribs over hips, and pull with your back.")
/* Translators: band-row: easier */
N_("Step closer, so the band pulls less.")
/* Translators: band-row: harder */
N_("Step back, or use a stronger band.")
/* Translators: band-side-walk: name */
N_("Band side walk")
/* Translators: band-side-walk: another name */
N_("Lateral band walk")
/* Translators: band-side-walk: another name */
N_("Crab walk")
/* Translators: band-side-walk: to spare knees, in lower case */
N_("stand taller, smaller steps")
/* Translators: band-side-walk: setup */
N_("Band around your legs just above the knees, feet hip-width, knees bent, band already tight.")
/* Translators: band-side-walk: cues 1 */
N_("Step wide, follow slowly")
/* Translators: band-side-walk: cues 2 */
N_("Keep the band tight")
/* Translators: band-side-walk: cues 3 */
N_("Knees in line with your toes")
/* Translators: band-side-walk: cues 4 */
N_("Two steps across, two back")
/* Translators: band-side-walk: fault */
N_("Feet snapping together? Stop the second foot at hip-width.")
/* Translators: band-side-walk: easier */
N_("Lighter band, stand taller and take smaller steps.")
/* Translators: band-side-walk: harder */
N_("Band lower, wear it around the ankles.")
/* Translators: band-squat: name */
N_("Band squat")
/* Translators: band-squat: another name */
N_("Loop-band squat")
/* Translators: band-squat: to spare knees, in lower case */
N_("go only as low as feels easy")
/* Translators: band-squat: setup */
N_("Put a loop band above your knees, feet a little wider than your hips.")
/* Translators: band-squat: cues 1 */
N_("Push gently out into the band")
/* Translators: band-squat: cues 2 */
N_("Sit back and down")
/* Translators: band-squat: cues 3 */
N_("Knees over your toes all the way")
/* Translators: band-squat: cues 4 */
N_("Stand tall, band still tight")
/* Translators: band-squat: fault */
N_("Band pulling your knees in? Choose a lighter one and sit higher.")
/* Translators: band-squat: easier */
N_("No band, just a slow squat.")
/* Translators: band-squat: harder */
N_("Stronger band, or a pause at the bottom.")
/* Translators: bear-crawl: name */
N_("Bear crawl")
/* Translators: bear-crawl: another name */
N_("Bear walk")
/* Translators: bear-crawl: setup */
N_("On hands and toes, hands under shoulders, knees bent and hovering just above the floor.")
/* Translators: bear-crawl: cues 1 */
N_("Opposite hand and foot step together")
/* Translators: bear-crawl: cues 2 */
N_("Hips low, back flat")
/* Translators: bear-crawl: cues 3 */
N_("Small, quiet steps")
/* Translators: bear-crawl: cues 4 */
N_("Two steps forward, two back")
/* Translators: bear-crawl: fault */
N_("Hips rising and swaying? Take shorter steps, knees near the floor.")
/* Translators: bear-crawl: easier */
N_("Stay put, hover your knees and hold.")
/* Translators: bear-crawl: harder */
N_("Slow motion, pause with one hand and foot lifted.")
/* Translators: bear-hold: name */
N_("Bear hold")
/* Translators: bear-hold: another name */
N_("Bear plank")
/* Translators: bear-hold: another name */
N_("All-fours hover")
/* Translators: bear-hold: to spare wrists, in lower case */
N_("on fists or on dumbbells")
/* Translators: bear-hold: to spare knees, in lower case */
N_("hips a little higher, shorter holds")
/* Translators: bear-hold: to spare pressure, in lower case */
N_("short holds, never hold your breath")
/* Translators: bear-hold: setup */
N_("Kneel on all fours, hands under your shoulders, toes tucked, then lift both knees.")
/* Translators: bear-hold: cues 1 */
N_("Knees a hand's width off the floor")
/* Translators: bear-hold: cues 2 */
N_("Back flat as a table")
/* Translators: bear-hold: cues 3 */
N_("Push the floor away")
/* Translators: bear-hold: cues 4 */
N_("Breathe slowly")
/* Translators: bear-hold: fault */
N_("Hips creeping up? Sink them level with your shoulders.")
/* Translators: bear-hold: easier */
N_("Knees down, opposite arm and leg reach.")
/* Translators: bear-hold: harder */
N_("Crawl forward, small steps, back flat.")
/* Translators: bent-over-rear-raise: name */
N_("Bent-over rear raise")
/* Translators: bent-over-rear-raise: another name */
N_("Reverse fly")
/* Translators: bent-over-rear-raise: another name */
N_("Rear raise")
/* Translators: bent-over-rear-raise: to spare lower-back, in lower case */
N_("sit on a chair and lean forward")
/* Translators: bent-over-rear-raise: to spare shoulders, in lower case */
N_("thumbs up, lift a little lower")
/* Translators: bent-over-rear-raise: setup */
N_("Lean forward from your hips, knees soft, light dumbbells hanging under your shoulders.")
/* Translators: bent-over-rear-raise: cues 1 */
N_("Open your arms wide, elbows soft")
/* Translators: bent-over-rear-raise: cues 2 */
N_("Lift to shoulder height, no higher")
/* Translators: bent-over-rear-raise: cues 3 */
N_("Lower slowly, without swinging")
/* Translators: bent-over-rear-raise: cues 4 */
N_("Neck long, eyes on the floor")
/* Translators: bent-over-rear-raise: fault */
N_("Shrugging? Use lighter weights and keep your shoulders away from your ears.")
/* Translators: bent-over-rear-raise: easier */
N_("No weights, thumbs turned up.")
/* Translators: bent-over-rear-raise: harder */
N_("Pause on top, then lower for three counts.")
/* Translators: bent-over-row: name */
N_("Bent-over row")
/* Translators: bent-over-row: another name */
N_("Two-arm dumbbell row")
/* Translators: bent-over-row: to spare lower-back, in lower case */
N_("one hand on a chair, one weight")
/* Translators: bent-over-row: setup */
N_("Hold two dumbbells, soften your knees and lean forward from your hips, back long.")
/* Translators: bent-over-row: cues 1 */
N_("Pull your elbows towards your hips")
/* Translators: bent-over-row: cues 2 */
N_("Squeeze your shoulder blades, then lower slowly")
/* Translators: bent-over-row: cues 3 */
N_("Keep your back long and still")
/* Translators: bent-over-row: cues 4 */
N_("Breathe out as you pull")
/* Translators: bent-over-row: fault */
N_("Standing up as you pull? Use less weight and keep your chest low.")
/* Translators: bent-over-row: easier */
N_("One arm, other hand on your thigh or a chair.")
/* Translators: bent-over-row: harder */
N_("Longer pause, two counts on top, then lower slowly.")
/* Translators: biceps-curl: name */
N_("Biceps curl")
/* Translators: biceps-curl: another name */
N_("Dumbbell curl")
/* Translators: biceps-curl: to spare wrists, in lower case */
N_("turn your palms in, thumbs up")
/* Translators: biceps-curl: setup */
N_("Stand tall, feet hip-width, a dumbbell in each hand, palms facing forward, arms long.")
/* Translators: biceps-curl: cues 1 */
N_("Elbows stay by your ribs")
/* Translators: biceps-curl: cues 2 */
N_("Curl up, wrists straight")
/* Translators: biceps-curl: cues 3 */
N_("Lower slowly, all the way")
/* Translators: biceps-curl: cues 4 */
N_("Stand still, no swinging")
/* Translators: biceps-curl: fault */
N_("Leaning back to lift? Soften your knees and use less weight.")
/* Translators: biceps-curl: easier */
N_("One arm, let the other rest, then swap.")
/* Translators: biceps-curl: harder */
N_("Slower down, count three on the way.")
/* Translators: bicycle-crunch: name */
N_("Bicycle crunch")
/* Translators: bicycle-crunch: another name */
N_("Bicycle")
/* Translators: bicycle-crunch: to spare neck, in lower case */
N_("head down, legs only")
/* Translators: bicycle-crunch: to spare lower-back, in lower case */
N_("legs higher, smaller turns")
/* Translators: bicycle-crunch: setup */
N_("Lie on your back, fingertips behind your head, knees above your hips, shoulders lifted.")
/* Translators: bicycle-crunch: cues 1 */
N_("Shoulder turns towards the opposite knee")
/* Translators: bicycle-crunch: cues 2 */
N_("Other leg reaches long")
/* Translators: bicycle-crunch: cues 3 */
N_("Turn from your ribs, elbows wide")
/* Translators: bicycle-crunch: cues 4 */
N_("Slow enough to breathe")
/* Translators: bicycle-crunch: fault */
N_("Pulling your head round? Open your elbows and turn from your ribs.")
/* Translators: bicycle-crunch: easier */
N_("Head down, opposite arm and leg reach away.")
/* Translators: bicycle-crunch: harder */
N_("Slower, with the long leg closer to the floor.")
/* Translators: bike-easy-ride: name */
N_("Easy bike ride")
/* Translators: bike-easy-ride: another name */
N_("Gentle ride")
/* Translators: bike-easy-ride: to spare knees, in lower case */
N_("saddle a little higher, less resistance")
/* Translators: bike-easy-ride: to spare hips, in lower case */
N_("saddle a little higher")
/* Translators: bike-easy-ride: setup */
N_("Set the saddle so your knee stays slightly bent when the pedal is lowest.")
/* Translators: bike-easy-ride: cues 1 */
N_("Turn the pedals smoothly")
/* Translators: bike-easy-ride: cues 2 */
N_("Shoulders loose, hands light")
/* Translators: bike-easy-ride: cues 3 */
N_("Knees point straight ahead")
/* Translators: bike-easy-ride: cues 4 */
N_("Stay able to talk")
/* Translators: bike-easy-ride: fault */
N_("Hips rocking from side to side? Lower the saddle a little.")
/* Translators: bike-easy-ride: easier */
N_("Less resistance, and an unhurried rhythm.")
/* Translators: bike-easy-ride: harder */
N_("Add resistance, as if riding up a hill.")
/* Translators: bike-hill-ride: name */
N_("Bike hill ride")
/* Translators: bike-hill-ride: another name */
N_("Heavy ride")
/* Translators: bike-hill-ride: to spare knees, in lower case */
N_("less resistance, quicker turns")
/* Translators: bike-hill-ride: to spare lower-back, in lower case */
N_("sit more upright")
/* Translators: bike-hill-ride: setup */
N_("Stay in the saddle, then turn up the resistance until pedalling feels like a climb.")
/* Translators: bike-hill-ride: cues 1 */
N_("Press down evenly with both legs")
/* Translators: bike-hill-ride: cues 2 */
N_("Slow, strong turns")
/* Translators: bike-hill-ride: cues 3 */
N_("Back long, chest open")
/* Translators: bike-hill-ride: cues 4 */
N_("Relax your grip")
/* Translators: bike-hill-ride: fault */
N_("Shoulders swaying? Take off a little resistance.")
/* Translators: bike-hill-ride: easier */
N_("Less resistance, back to an easy ride.")
/* Translators: bike-hill-ride: harder */
N_("Short bursts, a little quicker for ten turns.")
/* Translators: bird-dog: name */
N_("Bird dog")
/* Translators: bird-dog: another name */
N_("Opposite arm and leg reach")
/* Translators: bird-dog: to spare wrists, in lower case */
N_("on a fist, or forearms on a cushion")
/* Translators: bird-dog: to spare knees, in lower case */
N_("folded towel under your knees")
/* Translators: bird-dog: setup */
N_("Kneel on all fours, hands under your shoulders and knees under your hips.")
/* Translators: bird-dog: cues 1 */
N_("Reach opposite arm and leg long")
/* Translators: bird-dog: cues 2 */
N_("Both hips face the floor")
/* Translators: bird-dog: cues 3 */
N_("Lift no higher than level")
/* Translators: bird-dog: cues 4 */
N_("Pause, return, then change sides")
/* Translators: bird-dog: fault */
N_("Back dipping as the leg lifts? Keep it lower, tummy drawn in.")
/* Translators: bird-dog: easier */
N_("Leg only, both hands stay down.")
/* Translators: bird-dog: harder */
N_("Longer reach, two slow breaths each time.")
/* Translators: burpee: name */
N_("Burpee")
/* Translators: burpee: to spare wrists, in lower case */
N_("on fists, step instead of jump")
/* Translators: burpee: to spare knees, in lower case */
N_("step back and in, no jump")
/* Translators: burpee: to spare pelvic-floor, in lower case */
N_("step back and in, no jump")
/* Translators: burpee: to spare lower-back, in lower case */
N_("step back, hips kept high")
/* Translators: burpee: to spare pressure, in lower case */
N_("stand up more slowly")
/* Translators: burpee: setup */
N_("Stand tall with your feet hip-width apart and clear floor behind you.")
/* Translators: burpee: cues 1 */
N_("Hands down, jump back")
/* Translators: burpee: cues 2 */
N_("Chest down, push up")
/* Translators: burpee: cues 3 */
N_("Jump in, feet outside hands")
/* Translators: burpee: cues 4 */
N_("Jump tall, land softly")
/* Translators: burpee: fault */
N_("Hips dropping as you jump back? Draw your tummy in first.")
/* Translators: burpee: easier */
N_("No jump, step back and in.")
/* Translators: burpee: harder */
N_("Knees tucked, drawn up on every jump.")
/* Translators: butt-kicks: name */
N_("Butt kicks")
/* Translators: butt-kicks: another name */
N_("Heel kicks")
/* Translators: butt-kicks: another name */
N_("Heel flicks")
/* Translators: butt-kicks: to spare knees, in lower case */
N_("bend the knee only halfway")
/* Translators: butt-kicks: to spare pelvic-floor, in lower case */
N_("step it, one foot always down")
/* Translators: butt-kicks: setup */
N_("Stand tall with your feet hip-width apart, elbows bent, ready to jog on the spot.")
/* Translators: butt-kicks: cues 1 */
N_("Heels up towards your buttocks")
/* Translators: butt-kicks: cues 2 */
N_("Knees point down at the floor")
/* Translators: butt-kicks: cues 3 */
N_("Stay tall through your chest")
/* Translators: butt-kicks: cues 4 */
N_("Land softly on your toes")
/* Translators: butt-kicks: fault */
N_("Bending forward? Stand tall and let your heels rise a little less.")
/* Translators: butt-kicks: easier */
N_("March instead, one foot always on the floor.")
/* Translators: butt-kicks: harder */
N_("Knees in front, up to hip height.")
/* Translators: butterfly-stretch: name */
N_("Butterfly stretch")
/* Translators: butterfly-stretch: another name */
N_("Seated inner-thigh stretch")
/* Translators: butterfly-stretch: to spare knees, in lower case */
N_("feet further away, cushions under the knees")
/* Translators: butterfly-stretch: to spare hips, in lower case */
N_("cushions under the knees")
/* Translators: butterfly-stretch: setup */
N_("Sit tall, soles of the feet together, knees out wide, hands around your ankles.")
/* Translators: butterfly-stretch: cues 1 */
N_("Grow tall from your hips")
/* Translators: butterfly-stretch: cues 2 */
N_("Let the knees sink")
/* Translators: butterfly-stretch: cues 3 */
N_("Shoulders loose")
/* Translators: butterfly-stretch: cues 4 */
N_("Slow breath out")
/* Translators: butterfly-stretch: fault */
N_("Pushing the knees down? Let their own weight do it.")
/* Translators: butterfly-stretch: easier */
N_("On a cushion, feet a little further away.")
/* Translators: butterfly-stretch: harder */
N_("Lean forward slowly, with a long back.")
/* Translators: calf-raise: name */
N_("Calf raise")
/* Translators: calf-raise: another name */
N_("Heel raise")
/* Translators: calf-raise: to spare balance, in lower case */
N_("fingertips on a wall or chair")
/* Translators: calf-raise: setup */
N_("Stand tall, feet hip-width and pointing ahead, hands on your hips.")
/* Translators: calf-raise: cues 1 */
N_("Rise straight up, heels high")
/* Translators: calf-raise: cues 2 */
N_("Press through your big toes")
/* Translators: calf-raise: cues 3 */
N_("Pause at the top")
/* Translators: calf-raise: cues 4 */
N_("Lower slowly, all the way")
/* Translators: calf-raise: fault */
N_("Ankles rolling outwards? Keep pressing the big toes down.")
/* Translators: calf-raise: easier */
N_("Hold a wall, lift only halfway.")
/* Translators: calf-raise: harder */
N_("One foot, lift the other and change halfway.")
/* Translators: cat-cow: name */
N_("Cat-cow")
/* Translators: cat-cow: another name */
N_("Cat-camel")
/* Translators: cat-cow: to spare wrists, in lower case */
N_("on fists or on forearms")
/* Translators: cat-cow: to spare knees, in lower case */
N_("mat folded double under the knees")
/* Translators: cat-cow: to spare lower-back, in lower case */
N_("round only, then back to flat")
/* Translators: cat-cow: setup */
N_("Come onto hands and knees, hands under shoulders, knees under hips.")
/* Translators: cat-cow: cues 1 */
N_("Breathe out, round your back")
/* Translators: cat-cow: cues 2 */
N_("Breathe in, let the chest open")
/* Translators: cat-cow: cues 3 */
N_("Start each move from the hips")
/* Translators: cat-cow: cues 4 */
N_("Arms stay straight")
/* Translators: cat-cow: fault */
N_("Only your head nodding? Let the hips lead and the head follow.")
/* Translators: cat-cow: easier */
N_("Smaller movement, rounding only, then flat again.")
/* Translators: cat-cow: harder */
N_("Bird dog, one arm and the opposite leg reaching long.")
/* Translators: chair-dip: name */
N_("Chair dip")
/* Translators: chair-dip: another name */
N_("Bench dip")
/* Translators: chair-dip: another name */
N_("Triceps dip")
/* Translators: chair-dip: to spare shoulders, in lower case */
N_("dip only a little, hips close")
/* Translators: chair-dip: to spare wrists, in lower case */
N_("turn your fingers slightly outwards")
/* Translators: chair-dip: setup */
N_("Hold the front edge of a sturdy chair against a wall, hips just off the seat.")
/* Translators: chair-dip: cues 1 */
N_("Keep your back close to the chair")
/* Translators: chair-dip: cues 2 */
N_("Bend your elbows straight back")
/* Translators: chair-dip: cues 3 */
N_("Stop before your shoulders feel stretched")
/* Translators: chair-dip: cues 4 */
N_("Press until your arms are straight")
/* Translators: chair-dip: fault */
N_("Shoulders hunching up? Stay higher and lift your chest.")
/* Translators: chair-dip: easier */
N_("Feet closer, dipping only a little.")
/* Translators: chair-dip: harder */
N_("Legs straight, heels on the floor.")
/* Translators: chair-squat: name */
N_("Chair squat")
/* Translators: chair-squat: another name */
N_("Box squat")
/* Translators: chair-squat: to spare knees, in lower case */
N_("add a cushion to raise the seat")
/* Translators: chair-squat: to spare balance, in lower case */
N_("hands on the seat or your thighs")
/* Translators: chair-squat: setup */
N_("Stand in front of a sturdy chair against a wall, feet hip-width apart.")
/* Translators: chair-squat: cues 1 */
N_("Reach your hips back to the seat")
/* Translators: chair-squat: cues 2 */
N_("Touch down lightly")
/* Translators: chair-squat: cues 3 */
N_("Lean forward, then stand up tall")
/* Translators: chair-squat: cues 4 */
N_("Knees over your toes")
/* Translators: chair-squat: fault */
N_("Dropping onto the seat? Count three on the way down.")
/* Translators: chair-squat: easier */
N_("Hands help, pushing on your thighs or the seat.")
/* Translators: chair-squat: harder */
N_("No chair, sitting back just as slowly.")
/* Translators: chest-opener: name */
N_("Chest opener")
/* Translators: chest-opener: another name */
N_("Standing chest stretch")
/* Translators: chest-opener: to spare shoulders, in lower case */
N_("hands on hips, elbows back")
/* Translators: chest-opener: setup */
N_("Stand tall, arms out wide just below shoulder height, palms facing forward.")
/* Translators: chest-opener: cues 1 */
N_("Draw both arms gently back")
/* Translators: chest-opener: cues 2 */
N_("Turn the thumbs backwards")
/* Translators: chest-opener: cues 3 */
N_("Breathe into your chest")
/* Translators: chest-opener: cues 4 */
N_("Knees soft")
/* Translators: chest-opener: fault */
N_("Lower back arching? Tuck the hips and bring the arms forward.")
/* Translators: chest-opener: easier */
N_("Hands on hips, and draw the elbows back.")
/* Translators: chest-opener: harder */
N_("Hands clasped, behind you, lifted away from your back.")
/* Translators: child-s-pose: name */
N_("Child's pose")
/* Translators: child-s-pose: another name */
N_("Kneeling back stretch")
/* Translators: child-s-pose: to spare knees, in lower case */
N_("a thick cushion between buttocks and heels")
/* Translators: child-s-pose: to spare ankles, in lower case */
N_("a rolled towel under the ankles")
/* Translators: child-s-pose: to spare shoulders, in lower case */
N_("arms back alongside the body")
/* Translators: child-s-pose: to spare pressure, in lower case */
N_("forehead raised on stacked fists")
/* Translators: child-s-pose: setup */
N_("Kneel, sit back towards your heels, and fold forward with your arms stretched out in front.")
/* Translators: child-s-pose: cues 1 */
N_("Hips sink towards the heels")
/* Translators: child-s-pose: cues 2 */
N_("Forehead rests down")
/* Translators: child-s-pose: cues 3 */
N_("Fingers walk a little further")
/* Translators: child-s-pose: cues 4 */
N_("Breathe into your back")
/* Translators: child-s-pose: fault */
N_("Shoulders creeping up to your ears? Bend the elbows and soften.")
/* Translators: child-s-pose: easier */
N_("On a cushion, forehead resting on stacked fists.")
/* Translators: child-s-pose: harder */
N_("Hands across, walking to one side, then the other.")
/* Translators: clam: name */
N_("Clam")
/* Translators: clam: another name */
N_("Clamshell")
/* Translators: clam: setup */
N_("Lie on your side, head on your lower arm, knees bent, feet together, one hip above the other.")
/* Translators: clam: cues 1 */
N_("Open the top knee, feet together")
/* Translators: clam: cues 2 */
N_("Top hip forward, no rolling back")
/* Translators: clam: cues 3 */
N_("Pause at the top, close slowly")
/* Translators: clam: fault */
N_("Rolling backwards? Bring the top hip forward and open less.")
/* Translators: clam: easier */
N_("Smaller opening, top hand on the floor in front.")
/* Translators: clam: harder */
N_("Leg long, lift the whole top leg.")
/* Translators: close-grip-push-up: name */
N_("Close-grip push-up")
/* Translators: close-grip-push-up: another name */
N_("Narrow press-up")
/* Translators: close-grip-push-up: another name */
N_("Close-hand push-up")
/* Translators: close-grip-push-up: to spare wrists, in lower case */
N_("on fists or on dumbbells")
/* Translators: close-grip-push-up: to spare shoulders, in lower case */
N_("lower only halfway")
/* Translators: close-grip-push-up: to spare lower-back, in lower case */
N_("knees down, tummy firm")
/* Translators: close-grip-push-up: setup */
N_("Start in a high plank, hands just inside shoulder width, fingers forward.")
/* Translators: close-grip-push-up: cues 1 */
N_("Let your elbows brush your ribs")
/* Translators: close-grip-push-up: cues 2 */
N_("Lower your chest to your hands")
/* Translators: close-grip-push-up: cues 3 */
N_("Body straight, tummy firm")
/* Translators: close-grip-push-up: cues 4 */
N_("Press up through your whole hand")
/* Translators: close-grip-push-up: fault */
N_("Elbows drifting out? Widen your hands slightly and keep your arms close.")
/* Translators: close-grip-push-up: easier */
N_("Hands wider, as in an ordinary push-up.")
/* Translators: close-grip-push-up: harder */
N_("Feet up, on a sturdy chair against a wall.")
/* Translators: cross-body-shoulder-stretch: name */
N_("Cross-body shoulder stretch")
/* Translators: cross-body-shoulder-stretch: another name */
N_("Arm-across stretch")
/* Translators: cross-body-shoulder-stretch: to spare shoulders, in lower case */
N_("arm lower, lighter pull")
/* Translators: cross-body-shoulder-stretch: setup */
N_("Stand tall, bring one arm across your chest and hold it with the other hand.")
/* Translators: cross-body-shoulder-stretch: cues 1 */
N_("Hold just above the elbow")
/* Translators: cross-body-shoulder-stretch: cues 2 */
N_("Shoulder stays low")
/* Translators: cross-body-shoulder-stretch: cues 3 */
N_("Chest faces forward")
/* Translators: cross-body-shoulder-stretch: cues 4 */
N_("Breathe out and ease closer")
/* Translators: cross-body-shoulder-stretch: fault */
N_("Shoulder hunching up? Slide it down before you pull.")
/* Translators: cross-body-shoulder-stretch: easier */
N_("Arm lower down, across the ribs, with less pull.")
/* Translators: cross-body-shoulder-stretch: harder */
N_("Draw arm closer, then look over the stretching shoulder.")
/* Translators: crunch: name */
N_("Crunch")
/* Translators: crunch: another name */
N_("Curl-up")
/* Translators: crunch: to spare neck, in lower case */
N_("head heavy in both hands")
/* Translators: crunch: to spare lower-back, in lower case */
N_("smaller lift, feet flat")
/* Translators: crunch: setup */
N_("Lie on your back, knees bent, feet flat, fingertips lightly behind your head.")
/* Translators: crunch: cues 1 */
N_("Curl your shoulders off the mat")
/* Translators: crunch: cues 2 */
N_("Breathe out as you lift")
/* Translators: crunch: cues 3 */
N_("Elbows wide, chin off your chest")
/* Translators: crunch: cues 4 */
N_("Lower slowly")
/* Translators: crunch: fault */
N_("Pulling on your head? Let it rest in your hands and look up.")
/* Translators: crunch: easier */
N_("Head down, just press your back flat.")
/* Translators: crunch: harder */
N_("Keep curling, all the way up to sitting.")
/* Translators: curtsy-lunge: name */
N_("Curtsy lunge")
/* Translators: curtsy-lunge: another name */
N_("Cross-behind lunge")
/* Translators: curtsy-lunge: to spare knees, in lower case */
N_("step straight back, not across")
/* Translators: curtsy-lunge: to spare balance, in lower case */
N_("fingertips on a wall or chair")
/* Translators: curtsy-lunge: setup */
N_("Stand tall, feet hip-width, hands on your hips, toes pointing ahead.")
/* Translators: curtsy-lunge: cues 1 */
N_("Step back and across behind you")
/* Translators: curtsy-lunge: cues 2 */
N_("Hips face the front")
/* Translators: curtsy-lunge: cues 3 */
N_("Front heel stays down")
/* Translators: curtsy-lunge: cues 4 */
N_("Front knee follows your toes")
/* Translators: curtsy-lunge: fault */
N_("Twisting the hips? Cross less far and keep facing the front.")
/* Translators: curtsy-lunge: easier */
N_("No crossing, step straight back each time.")
/* Translators: curtsy-lunge: harder */
N_("Leap across, land softly on one foot.")
/* Translators: dead-bug: name */
N_("Dead bug")
/* Translators: dead-bug: to spare lower-back, in lower case */
N_("just lower one heel, back pressed down")
/* Translators: dead-bug: setup */
N_("Lie on your back, arms straight up, knees bent above your hips, shins level.")
/* Translators: dead-bug: cues 1 */
N_("Press your lower back down")
/* Translators: dead-bug: cues 2 */
N_("Opposite arm and leg reach away")
/* Translators: dead-bug: cues 3 */
N_("Breathe out as you reach")
/* Translators: dead-bug: cues 4 */
N_("Back to the middle, then change")
/* Translators: dead-bug: fault */
N_("Back lifting off the mat? Reach the leg less far.")
/* Translators: dead-bug: easier */
N_("Feet down, just press your back flat.")
/* Translators: dead-bug: harder */
N_("Legs straight, lower both slowly.")
/* Translators: decline-push-up: name */
N_("Decline push-up")
/* Translators: decline-push-up: another name */
N_("Feet-raised press-up")
/* Translators: decline-push-up: to spare wrists, in lower case */
N_("on fists or on dumbbells")
/* Translators: decline-push-up: to spare shoulders, in lower case */
N_("feet down, lower only halfway")
/* Translators: decline-push-up: to spare lower-back, in lower case */
N_("feet lower, tummy firm")
/* Translators: decline-push-up: to spare pressure, in lower case */
N_("feet down on the floor")
/* Translators: decline-push-up: setup */
N_("Put your feet on a sturdy chair against a wall, hands on the floor under your shoulders.")
/* Translators: decline-push-up: cues 1 */
N_("Tummy firm, hips level")
/* Translators: decline-push-up: cues 2 */
N_("Lower your head and chest together")
/* Translators: decline-push-up: cues 3 */
N_("Elbows angled back")
/* Translators: decline-push-up: cues 4 */
N_("Push the floor away")
/* Translators: decline-push-up: fault */
N_("Back sagging? Firm your tummy, or put your feet lower.")
/* Translators: decline-push-up: easier */
N_("Feet down, on the floor.")
/* Translators: decline-push-up: harder */
N_("Hips high, in a pike push-up.")
/* Translators: deep-squat-hold: name */
N_("Deep squat hold")
/* Translators: deep-squat-hold: another name */
N_("Low squat hold")
/* Translators: deep-squat-hold: to spare knees, in lower case */
N_("a higher squat, hands on a chair")
/* Translators: deep-squat-hold: to spare hips, in lower case */
N_("a wider, higher squat")
/* Translators: deep-squat-hold: to spare ankles, in lower case */
N_("heels on a rolled towel")
/* Translators: deep-squat-hold: to spare balance, in lower case */
N_("hold on to a chair")
/* Translators: deep-squat-hold: setup */
N_("Stand with feet wider than hips, toes out, and sink into your deepest easy squat.")
/* Translators: deep-squat-hold: cues 1 */
N_("Heels on the floor")
/* Translators: deep-squat-hold: cues 2 */
N_("Elbows inside the knees")
/* Translators: deep-squat-hold: cues 3 */
N_("Chest up, back long")
/* Translators: deep-squat-hold: cues 4 */
N_("Shift gently from side to side")
/* Translators: deep-squat-hold: fault */
N_("Heels lifting? Widen the feet or come up a little.")
/* Translators: deep-squat-hold: easier */
N_("Squat with reach, moving up and down instead of holding.")
/* Translators: deep-squat-hold: harder */
N_("One arm up, turning to follow your hand.")
/* Translators: donkey-kick: name */
N_("Donkey kick")
/* Translators: donkey-kick: another name */
N_("Bent-knee kickback")
/* Translators: donkey-kick: to spare wrists, in lower case */
N_("on fists or forearms")
/* Translators: donkey-kick: to spare knees, in lower case */
N_("folded towel under the knees")
/* Translators: donkey-kick: to spare lower-back, in lower case */
N_("smaller lift")
/* Translators: donkey-kick: setup */
N_("On hands and knees, hands under shoulders, knees under hips, back flat.")
/* Translators: donkey-kick: cues 1 */
N_("Press one heel towards the ceiling")
/* Translators: donkey-kick: cues 2 */
N_("Knee stays bent")
/* Translators: donkey-kick: cues 3 */
N_("Back flat, tummy gently firm")
/* Translators: donkey-kick: cues 4 */
N_("Both hips face the floor")
/* Translators: donkey-kick: fault */
N_("Lower back sagging? Lift lower and firm your tummy.")
/* Translators: donkey-kick: easier */
N_("Toes down, slide the foot back and in.")
/* Translators: donkey-kick: harder */
N_("Opposite arm, reach it forward as the leg goes long.")
/* Translators: dumbbell-pullover: name */
N_("Dumbbell pullover")
/* Translators: dumbbell-pullover: another name */
N_("Lying pullover")
/* Translators: dumbbell-pullover: to spare shoulders, in lower case */
N_("stop with your hands above your face")
/* Translators: dumbbell-pullover: setup */
N_("Lie on your back, knees bent, both hands around one dumbbell above your chest.")
/* Translators: dumbbell-pullover: cues 1 */
N_("Reach back slowly over your head")
/* Translators: dumbbell-pullover: cues 2 */
N_("Elbows softly bent all the way")
/* Translators: dumbbell-pullover: cues 3 */
N_("Let your lower back rest quietly")
/* Translators: dumbbell-pullover: cues 4 */
N_("Pull back to above your chest")
/* Translators: dumbbell-pullover: fault */
N_("Back arching? Stop the reach sooner and breathe out as you return.")
/* Translators: dumbbell-pullover: easier */
N_("Shorter reach, with a lighter dumbbell.")
/* Translators: dumbbell-pullover: harder */
N_("Slower reach, three counts back, one count up.")
/* Translators: dumbbell-reverse-lunge: name */
N_("Dumbbell reverse lunge")
/* Translators: dumbbell-reverse-lunge: another name */
N_("Weighted reverse lunge")
/* Translators: dumbbell-reverse-lunge: to spare knees, in lower case */
N_("go less deep, front shin upright")
/* Translators: dumbbell-reverse-lunge: to spare balance, in lower case */
N_("one weight, other hand on a wall")
/* Translators: dumbbell-reverse-lunge: setup */
N_("Stand tall, a dumbbell in each hand, arms long at your sides.")
/* Translators: dumbbell-reverse-lunge: cues 1 */
N_("Take a long step straight back")
/* Translators: dumbbell-reverse-lunge: cues 2 */
N_("Lower the back knee towards the floor")
/* Translators: dumbbell-reverse-lunge: cues 3 */
N_("Push through the front heel to rise")
/* Translators: dumbbell-reverse-lunge: cues 4 */
N_("Let the weights hang still")
/* Translators: dumbbell-reverse-lunge: fault */
N_("Wobbling? Step back as if on rails, feet hip-width apart.")
/* Translators: dumbbell-reverse-lunge: easier */
N_("No weights, hands on your hips.")
/* Translators: dumbbell-reverse-lunge: harder */
N_("Heavier weights, or a pause at the bottom.")
/* Translators: dumbbell-romanian-deadlift: name */
N_("Dumbbell Romanian deadlift")
/* Translators: dumbbell-romanian-deadlift: another name */
N_("Dumbbell RDL")
/* Translators: dumbbell-romanian-deadlift: to spare lower-back, in lower case */
N_("hands only as low as the knees")
/* Translators: dumbbell-romanian-deadlift: setup */
N_("Stand with feet hip-width, a dumbbell in each hand, resting against the front of your thighs.")
/* Translators: dumbbell-romanian-deadlift: cues 1 */
N_("Push your hips straight back")
/* Translators: dumbbell-romanian-deadlift: cues 2 */
N_("Back long, weights close to your legs")
/* Translators: dumbbell-romanian-deadlift: cues 3 */
N_("Knees soft, shins upright")
/* Translators: dumbbell-romanian-deadlift: cues 4 */
N_("Squeeze your buttocks to stand tall")
/* Translators: dumbbell-romanian-deadlift: fault */
N_("Back rounding? Stop higher and send your hips further back.")
/* Translators: dumbbell-romanian-deadlift: easier */
N_("No weights, arms crossed, bow forward from the hips.")
/* Translators: dumbbell-romanian-deadlift: harder */
N_("Slower down, three counts, weights close to your legs.")
/* Translators: fast-feet: name */
N_("Fast feet")
/* Translators: fast-feet: another name */
N_("Quick feet")
/* Translators: fast-feet: to spare knees, in lower case */
N_("stand taller, bend less")
/* Translators: fast-feet: to spare pelvic-floor, in lower case */
N_("quick steps, one foot always down")
/* Translators: fast-feet: setup */
N_("Stand with feet a little wider than your hips, knees bent, weight towards your toes.")
/* Translators: fast-feet: cues 1 */
N_("Tiny, quick steps")
/* Translators: fast-feet: cues 2 */
N_("Stay low, knees bent")
/* Translators: fast-feet: cues 3 */
N_("Feet barely leave the floor")
/* Translators: fast-feet: cues 4 */
N_("Keep breathing, shoulders loose")
/* Translators: fast-feet: fault */
N_("Creeping upright? Sit your hips back down and soften your knees.")
/* Translators: fast-feet: easier */
N_("Jog gently, standing a little taller.")
/* Translators: fast-feet: harder */
N_("Knees higher, up to hip height, same quick rhythm.")
/* Translators: figure-four-stretch: name */
N_("Figure-four stretch")
/* Translators: figure-four-stretch: another name */
N_("Lying buttock stretch")
/* Translators: figure-four-stretch: to spare knees, in lower case */
N_("lower foot down, no pull")
/* Translators: figure-four-stretch: to spare hips, in lower case */
N_("lower foot down, crossed knee higher")
/* Translators: figure-four-stretch: setup */
N_("Lie on your back, knees bent, and rest one ankle across the opposite thigh.")
/* Translators: figure-four-stretch: cues 1 */
N_("Hold behind the uncrossed thigh")
/* Translators: figure-four-stretch: cues 2 */
N_("Draw that leg gently closer")
/* Translators: figure-four-stretch: cues 3 */
N_("Let the crossed knee open outwards")
/* Translators: figure-four-stretch: cues 4 */
N_("Head rests on the floor")
/* Translators: figure-four-stretch: fault */
N_("Crossed foot going limp? Draw its toes up.")
/* Translators: figure-four-stretch: easier */
N_("Foot stays down, and ease the crossed knee away from you.")
/* Translators: figure-four-stretch: harder */
N_("Hold the shin, and draw the leg closer still.")
/* Translators: fire-hydrant: name */
N_("Fire hydrant")
/* Translators: fire-hydrant: another name */
N_("Side leg lift on all fours")
/* Translators: fire-hydrant: to spare wrists, in lower case */
N_("on fists or forearms")
/* Translators: fire-hydrant: to spare knees, in lower case */
N_("folded towel under the knees")
/* Translators: fire-hydrant: setup */
N_("On hands and knees, hands under shoulders, knees under hips, back flat.")
/* Translators: fire-hydrant: cues 1 */
N_("Lift the bent knee out sideways")
/* Translators: fire-hydrant: cues 2 */
N_("Hips level, back still")
/* Translators: fire-hydrant: cues 3 */
N_("Press evenly into both hands")
/* Translators: fire-hydrant: cues 4 */
N_("Lower slowly, barely touch down")
/* Translators: fire-hydrant: fault */
N_("Leaning away from the lifting leg? Lift lower and stay centred.")
/* Translators: fire-hydrant: easier */
N_("Lower lift, rest the knee down each time.")
/* Translators: fire-hydrant: harder */
N_("Leg straight, reach it out sideways at the top.")
/* Translators: floor-fly: name */
N_("Floor fly")
/* Translators: floor-fly: another name */
N_("Dumbbell floor fly")
/* Translators: floor-fly: to spare shoulders, in lower case */
N_("bend your elbows more, weights lighter")
/* Translators: floor-fly: setup */
N_("Lie on your back, knees bent, light dumbbells above your chest, palms facing each other.")
/* Translators: floor-fly: cues 1 */
N_("Open your arms in a wide arc")
/* Translators: floor-fly: cues 2 */
N_("Keep a soft bend in your elbows")
/* Translators: floor-fly: cues 3 */
N_("Touch the floor lightly, then close")
/* Translators: floor-fly: cues 4 */
N_("Keep your shoulders on the mat")
/* Translators: floor-fly: fault */
N_("Turning it into a press? Hold the same elbow bend throughout.")
/* Translators: floor-fly: easier */
N_("Press instead, elbows bent and closer in.")
/* Translators: floor-fly: harder */
N_("Slower arc, four counts down, two counts up.")
/* Translators: floor-press: name */
N_("Floor press")
/* Translators: floor-press: another name */
N_("Dumbbell floor press")
/* Translators: floor-press: to spare shoulders, in lower case */
N_("elbows closer, palms facing each other")
/* Translators: floor-press: to spare wrists, in lower case */
N_("wrists straight above your elbows")
/* Translators: floor-press: setup */
N_("Lie on your back, knees bent, dumbbells above your chest, palms facing your feet.")
/* Translators: floor-press: cues 1 */
N_("Lower until your upper arms touch softly")
/* Translators: floor-press: cues 2 */
N_("Elbows halfway out from your sides")
/* Translators: floor-press: cues 3 */
N_("Wrists straight above your elbows")
/* Translators: floor-press: cues 4 */
N_("Press up and slightly together")
/* Translators: floor-press: fault */
N_("Elbows flung wide? Bring them closer to your ribs.")
/* Translators: floor-press: easier */
N_("One dumbbell, held in both hands.")
/* Translators: floor-press: harder */
N_("Arms open wide, lighter weights, as a floor fly.")
/* Translators: flutter-kick: name */
N_("Flutter kick")
/* Translators: flutter-kick: to spare lower-back, in lower case */
N_("legs higher, knees a little bent")
/* Translators: flutter-kick: to spare pelvic-floor, in lower case */
N_("knees bent, one leg at a time")
/* Translators: flutter-kick: setup */
N_("Lie on your back, hands under your hips, legs long and just off the mat.")
/* Translators: flutter-kick: cues 1 */
N_("Press your lower back down")
/* Translators: flutter-kick: cues 2 */
N_("Small, quick kicks from the hips")
/* Translators: flutter-kick: cues 3 */
N_("Legs long, toes pointed")
/* Translators: flutter-kick: cues 4 */
N_("Breathe evenly")
/* Translators: flutter-kick: fault */
N_("Back arching? Lift your legs higher until it settles down.")
/* Translators: flutter-kick: easier */
N_("Knees bent, one leg reaching away at a time.")
/* Translators: flutter-kick: harder */
N_("Legs together, lower and lift them slowly.")
/* Translators: forward-lunge: name */
N_("Forward lunge")
/* Translators: forward-lunge: another name */
N_("Front lunge")
/* Translators: forward-lunge: to spare knees, in lower case */
N_("smaller step, half the depth")
/* Translators: forward-lunge: to spare balance, in lower case */
N_("fingertips on a wall or chair")
/* Translators: forward-lunge: setup */
N_("Stand tall, feet hip-width, hands on your hips, with space for a long step ahead.")
/* Translators: forward-lunge: cues 1 */
N_("Long step, land heel first")
/* Translators: forward-lunge: cues 2 */
N_("Sink straight down")
/* Translators: forward-lunge: cues 3 */
N_("Front knee follows your toes")
/* Translators: forward-lunge: cues 4 */
N_("Push back firmly to standing")
/* Translators: forward-lunge: fault */
N_("Heel lifting, knee sliding forward? Take a longer, calmer step.")
/* Translators: forward-lunge: easier */
N_("Step back, lunge behind you instead.")
/* Translators: forward-lunge: harder */
N_("Walk it, step through into the next lunge.")
/* Translators: glute-bridge: name */
N_("Glute bridge")
/* Translators: glute-bridge: another name */
N_("Hip bridge")
/* Translators: glute-bridge: another name */
N_("Hip raise")
/* Translators: glute-bridge: to spare lower-back, in lower case */
N_("lift only halfway")
/* Translators: glute-bridge: to spare neck, in lower case */
N_("look straight up, head still")
/* Translators: glute-bridge: setup */
N_("Lie on your back, knees bent, feet flat and hip-width, arms by your sides.")
/* Translators: glute-bridge: cues 1 */
N_("Press your heels down, lift your hips")
/* Translators: glute-bridge: cues 2 */
N_("Squeeze your buttocks at the top")
/* Translators: glute-bridge: cues 3 */
N_("Knees, hips and shoulders in line")
/* Translators: glute-bridge: cues 4 */
N_("Lower slowly")
/* Translators: glute-bridge: fault */
N_("Arching the lower back? Lift less and squeeze your buttocks first.")
/* Translators: glute-bridge: easier */
N_("Pelvis only, press your lower back down, then release.")
/* Translators: glute-bridge: harder */
N_("March it, hips high, lift one foot at a time.")
/* Translators: glute-bridge-march: name */
N_("Glute bridge march")
/* Translators: glute-bridge-march: another name */
N_("Marching bridge")
/* Translators: glute-bridge-march: to spare lower-back, in lower case */
N_("hips a little lower")
/* Translators: glute-bridge-march: setup */
N_("Lie on your back, knees bent, feet hip-width. Lift your hips and stay there.")
/* Translators: glute-bridge-march: cues 1 */
N_("Hips stay high and level")
/* Translators: glute-bridge-march: cues 2 */
N_("Lift one knee, then the other")
/* Translators: glute-bridge-march: cues 3 */
N_("Place the foot down softly")
/* Translators: glute-bridge-march: fault */
N_("Hips dropping as a foot leaves? Lift the foot only slightly.")
/* Translators: glute-bridge-march: easier */
N_("Both feet down, lift and lower your hips.")
/* Translators: glute-bridge-march: harder */
N_("One leg, hold the other straight and lift your hips.")
/* Translators: goblet-squat: name */
N_("Goblet squat")
/* Translators: goblet-squat: another name */
N_("Front-held squat")
/* Translators: goblet-squat: to spare knees, in lower case */
N_("go only as low as feels easy")
/* Translators: goblet-squat: to spare lower-back, in lower case */
N_("lighter weight, chest lifted")
/* Translators: goblet-squat: to spare pelvic-floor, in lower case */
N_("breathe out as you stand")
/* Translators: goblet-squat: setup */
N_("Hold one dumbbell upright against your chest, feet a little wider than your hips.")
/* Translators: goblet-squat: cues 1 */
N_("Weight close, elbows down")
/* Translators: goblet-squat: cues 2 */
N_("Sit down between your knees")
/* Translators: goblet-squat: cues 3 */
N_("Chest lifted, heels down")
/* Translators: goblet-squat: cues 4 */
N_("Push the floor away to stand")
/* Translators: goblet-squat: fault */
N_("Weight pulling you forward? Hug it closer and lift your chest.")
/* Translators: goblet-squat: easier */
N_("No weight, arms reaching forward.")
/* Translators: goblet-squat: harder */
N_("Stand and press, taking the weight overhead.")
/* Translators: good-morning: name */
N_("Good morning")
/* Translators: good-morning: another name */
N_("Standing bow")
/* Translators: good-morning: to spare lower-back, in lower case */
N_("hands on hips, smaller bow")
/* Translators: good-morning: setup */
N_("Stand with feet hip-width apart, knees soft, fingertips by your ears.")
/* Translators: good-morning: cues 1 */
N_("Push your hips straight back")
/* Translators: good-morning: cues 2 */
N_("Back long, chest bows forward")
/* Translators: good-morning: cues 3 */
N_("Feel the backs of your thighs")
/* Translators: good-morning: cues 4 */
N_("Squeeze your buttocks to stand")
/* Translators: good-morning: fault */
N_("Back rounding? Bow less far and lift your chest.")
/* Translators: good-morning: easier */
N_("Hands on hips, smaller bow.")
/* Translators: good-morning: harder */
N_("On one leg, the other reaching back.")
/* Translators: hammer-curl: name */
N_("Hammer curl")
/* Translators: hammer-curl: another name */
N_("Thumbs-up curl")
/* Translators: hammer-curl: setup */
N_("Stand tall, feet hip-width, a dumbbell in each hand, palms facing your thighs.")
/* Translators: hammer-curl: cues 1 */
N_("Elbows stay by your ribs")
/* Translators: hammer-curl: cues 2 */
N_("Thumbs on top all the way")
/* Translators: hammer-curl: cues 3 */
N_("Lower slowly to long arms")
/* Translators: hammer-curl: fault */
N_("Elbows swinging forward? Press them lightly into your sides.")
/* Translators: hammer-curl: easier */
N_("One arm, let the other rest, then swap.")
/* Translators: hammer-curl: harder */
N_("Halfway pause, forearms level, then finish the curl.")
/* Translators: heel-dig-and-pull: name */
N_("Heel dig and pull")
/* Translators: heel-dig-and-pull: another name */
N_("Heel taps with arms")
/* Translators: heel-dig-and-pull: to spare balance, in lower case */
N_("one hand on a chair")
/* Translators: heel-dig-and-pull: to spare shoulders, in lower case */
N_("hands on hips")
/* Translators: heel-dig-and-pull: setup */
N_("Stand tall with feet hip-width apart, arms reaching forward at chest height.")
/* Translators: heel-dig-and-pull: cues 1 */
N_("Tap one heel out in front")
/* Translators: heel-dig-and-pull: cues 2 */
N_("Pull both elbows back as you tap")
/* Translators: heel-dig-and-pull: cues 3 */
N_("Bring it in, then change legs")
/* Translators: heel-dig-and-pull: cues 4 */
N_("Keep the standing knee soft")
/* Translators: heel-dig-and-pull: fault */
N_("Leaning back with each tap? Step shorter and stay tall.")
/* Translators: heel-dig-and-pull: easier */
N_("March instead, with your arms swinging loosely.")
/* Translators: heel-dig-and-pull: harder */
N_("Bigger taps, bending the standing knee more.")
/* Translators: heel-tap: name */
N_("Heel tap")
/* Translators: heel-tap: another name */
N_("Heel touch")
/* Translators: heel-tap: to spare neck, in lower case */
N_("head down, slide the hand")
/* Translators: heel-tap: setup */
N_("Lie on your back, knees bent, feet flat, shoulders just off the mat.")
/* Translators: heel-tap: cues 1 */
N_("Reach one hand to the same heel")
/* Translators: heel-tap: cues 2 */
N_("Bend sideways, shoulders stay up")
/* Translators: heel-tap: cues 3 */
N_("Breathe out with each reach")
/* Translators: heel-tap: cues 4 */
N_("Chin off your chest")
/* Translators: heel-tap: fault */
N_("Chin poking forward? Look up, and rest your head when you need to.")
/* Translators: heel-tap: easier */
N_("Head down, one hand slides towards its heel.")
/* Translators: heel-tap: harder */
N_("Feet up, turn each elbow to opposite knee.")
/* Translators: high-knees: name */
N_("High knees")
/* Translators: high-knees: another name */
N_("High-knee run")
/* Translators: high-knees: to spare knees, in lower case */
N_("march, knees only as high as comfortable")
/* Translators: high-knees: to spare pelvic-floor, in lower case */
N_("march, one foot always on the floor")
/* Translators: high-knees: setup */
N_("Stand tall with your feet hip-width apart, elbows bent, ready to run on the spot.")
/* Translators: high-knees: cues 1 */
N_("Knees up to hip height")
/* Translators: high-knees: cues 2 */
N_("Stay tall, chest lifted")
/* Translators: high-knees: cues 3 */
N_("Arms drive with your legs")
/* Translators: high-knees: cues 4 */
N_("Land on soft, springy feet")
/* Translators: high-knees: fault */
N_("Leaning back? Bring your ribs over your hips and lift a little less.")
/* Translators: high-knees: easier */
N_("March instead, one foot always on the floor.")
/* Translators: high-knees: harder */
N_("Faster arms, knees as high as you can.")
/* Translators: high-plank: name */
N_("High plank")
/* Translators: high-plank: another name */
N_("Straight-arm plank")
/* Translators: high-plank: another name */
N_("Push-up hold")
/* Translators: high-plank: to spare wrists, in lower case */
N_("on fists or on dumbbells")
/* Translators: high-plank: to spare lower-back, in lower case */
N_("knees down, hips a touch higher")
/* Translators: high-plank: to spare pressure, in lower case */
N_("short holds, never hold your breath")
/* Translators: high-plank: setup */
N_("Place your hands under your shoulders, then step both feet back into one long line.")
/* Translators: high-plank: cues 1 */
N_("Push the floor away")
/* Translators: high-plank: cues 2 */
N_("Squeeze your buttocks and thighs")
/* Translators: high-plank: cues 3 */
N_("Look down, neck long")
/* Translators: high-plank: cues 4 */
N_("Keep breathing")
/* Translators: high-plank: fault */
N_("Hips sagging? Squeeze your buttocks and draw your tummy in.")
/* Translators: high-plank: easier */
N_("Knees down, forearms too, same straight line.")
/* Translators: high-plank: harder */
N_("Shoulder taps, each hand in turn, hips still.")
/* Translators: hip-circles: name */
N_("Hip circles")
/* Translators: hip-circles: to spare lower-back, in lower case */
N_("smaller circles")
/* Translators: hip-circles: setup */
N_("Stand with feet wider than hips, hands on your hips, knees soft.")
/* Translators: hip-circles: cues 1 */
N_("Draw a wide, slow circle")
/* Translators: hip-circles: cues 2 */
N_("Head stays over the feet")
/* Translators: hip-circles: cues 3 */
N_("Knees stay soft")
/* Translators: hip-circles: cues 4 */
N_("Halfway, change direction")
/* Translators: hip-circles: fault */
N_("Upper body swaying? Keep head and shoulders still.")
/* Translators: hip-circles: easier */
N_("Small circles, with one hand on a wall.")
/* Translators: hip-circles: harder */
N_("Hip gate, lifting one knee up and out.")
/* Translators: hip-gate: name */
N_("Hip gate")
/* Translators: hip-gate: another name */
N_("Open the gate")
/* Translators: hip-gate: to spare balance, in lower case */
N_("one hand on a wall")
/* Translators: hip-gate: to spare hips, in lower case */
N_("lift and open the knee less")
/* Translators: hip-gate: setup */
N_("Stand tall, feet hip-width apart, hands on your hips, weight on one leg.")
/* Translators: hip-gate: cues 1 */
N_("Lift the other knee in front")
/* Translators: hip-gate: cues 2 */
N_("Open it out to the side")
/* Translators: hip-gate: cues 3 */
N_("Foot down, then change")
/* Translators: hip-gate: cues 4 */
N_("Stand tall, hips level")
/* Translators: hip-gate: fault */
N_("Whole body turning? Keep your chest facing forward.")
/* Translators: hip-gate: easier */
N_("Hip circles, both feet on the floor.")
/* Translators: hip-gate: harder */
N_("Pause out wide, one full breath before lowering.")
/* Translators: hollow-hold: name */
N_("Hollow hold")
/* Translators: hollow-hold: another name */
N_("Hollow body hold")
/* Translators: hollow-hold: to spare lower-back, in lower case */
N_("knees bent, arms by your sides")
/* Translators: hollow-hold: to spare neck, in lower case */
N_("head down, legs only")
/* Translators: hollow-hold: to spare pressure, in lower case */
N_("short holds, never hold your breath")
/* Translators: hollow-hold: to spare pelvic-floor, in lower case */
N_("one leg up at a time")
/* Translators: hollow-hold: setup */
N_("Lie on your back, arms overhead, legs long, then lift shoulders and heels off the mat.")
/* Translators: hollow-hold: cues 1 */
N_("Lower back stays pressed down")
/* Translators: hollow-hold: cues 2 */
N_("Reach long, fingers and toes")
/* Translators: hollow-hold: cues 3 */
N_("Chin slightly tucked")
/* Translators: hollow-hold: cues 4 */
N_("Small, steady breaths")
/* Translators: hollow-hold: fault */
N_("Back lifting? Raise your legs higher or bend your knees.")
/* Translators: hollow-hold: easier */
N_("Head down, opposite arm and leg reach away.")
/* Translators: hollow-hold: harder */
N_("Fold up, hands and feet meeting above you.")
/* Translators: inchworm: name */
N_("Inchworm")
/* Translators: inchworm: another name */
N_("Caterpillar walk")
/* Translators: inchworm: to spare pressure, in lower case */
N_("come up slowly")
/* Translators: inchworm: setup */
N_("Stand tall, feet hip-width, knees soft, with a body length of space in front.")
/* Translators: inchworm: cues 1 */
N_("Walk your hands out to a plank")
/* Translators: inchworm: cues 2 */
N_("Tummy firm, hips level")
/* Translators: inchworm: cues 3 */
N_("Tiny steps, feet towards hands")
/* Translators: inchworm: cues 4 */
N_("Stand up, step back, repeat")
/* Translators: inchworm: fault */
N_("Hips sagging in the plank? Stop the hands a little earlier.")
/* Translators: inchworm: easier */
N_("Knees bent, walk your hands out and back.")
/* Translators: inchworm: harder */
N_("Push-up, add one in the plank.")
/* Translators: incline-push-up: name */
N_("Incline push-up")
/* Translators: incline-push-up: another name */
N_("Hands-raised press-up")
/* Translators: incline-push-up: to spare wrists, in lower case */
N_("hold the edges, wrists straight")
/* Translators: incline-push-up: to spare shoulders, in lower case */
N_("lower only halfway, elbows close")
/* Translators: incline-push-up: setup */
N_("Place your hands on a sturdy chair against a wall, then walk your feet back.")
/* Translators: incline-push-up: cues 1 */
N_("Keep your body straight, like a plank")
/* Translators: incline-push-up: cues 2 */
N_("Lower your chest to the edge")
/* Translators: incline-push-up: cues 3 */
N_("Elbows angled back")
/* Translators: incline-push-up: cues 4 */
N_("Press away until your arms are straight")
/* Translators: incline-push-up: fault */
N_("Shoulders by your ears? Slide them down before each push.")
/* Translators: incline-push-up: easier */
N_("Against a wall, hands at chest height.")
/* Translators: incline-push-up: harder */
N_("On the floor, with your knees down.")
/* Translators: inverted-row: name */
N_("Inverted row")
/* Translators: inverted-row: another name */
N_("Body-weight row")
/* Translators: inverted-row: another name */
N_("Bar row")
/* Translators: inverted-row: to spare grip, in lower case */
N_("fewer pulls, shake your hands between")
/* Translators: inverted-row: to spare shoulders, in lower case */
N_("stop short of fully straight arms")
/* Translators: inverted-row: setup */
N_("Hang under a sturdy, fixed bar at hip height, arms and body straight.")
/* Translators: inverted-row: cues 1 */
N_("Pull your chest to the bar")
/* Translators: inverted-row: cues 2 */
N_("Shoulder blades back and down")
/* Translators: inverted-row: cues 3 */
N_("Hips level, legs and tummy firm")
/* Translators: inverted-row: cues 4 */
N_("Lower until your arms are straight")
/* Translators: inverted-row: fault */
N_("Hips sagging? Squeeze your buttocks and hold one straight line.")
/* Translators: inverted-row: easier */
N_("Knees bent, feet flat on the floor.")
/* Translators: inverted-row: harder */
N_("Longer pause, two counts on top, then lower slowly.")
/* Translators: jog-on-the-spot: name */
N_("Jog on the spot")
/* Translators: jog-on-the-spot: another name */
N_("Jogging in place")
/* Translators: jog-on-the-spot: to spare knees, in lower case */
N_("march, one foot always down")
/* Translators: jog-on-the-spot: to spare pelvic-floor, in lower case */
N_("march, one foot always down")
/* Translators: jog-on-the-spot: setup */
N_("Stand tall with your feet under your hips, elbows bent and hands relaxed.")
/* Translators: jog-on-the-spot: cues 1 */
N_("Small, light steps")
/* Translators: jog-on-the-spot: cues 2 */
N_("Land softly, knees a little bent")
/* Translators: jog-on-the-spot: cues 3 */
N_("Shoulders down, hands loose")
/* Translators: jog-on-the-spot: cues 4 */
N_("Breathe in an easy rhythm")
/* Translators: jog-on-the-spot: fault */
N_("Landing loudly? Take smaller steps and soften your knees.")
/* Translators: jog-on-the-spot: easier */
N_("March instead, one foot always on the floor.")
/* Translators: jog-on-the-spot: harder */
N_("Knees higher, up to hip height.")
/* Translators: jumping-jack: name */
N_("Jumping jack")
/* Translators: jumping-jack: another name */
N_("Side-straddle hop")
/* Translators: jumping-jack: to spare shoulders, in lower case */
N_("arms only to shoulder height")
/* Translators: jumping-jack: setup */
N_("Stand tall, feet together, arms by your sides, knees soft.")
/* Translators: jumping-jack: cues 1 */
N_("Jump feet wide, arms overhead")
/* Translators: jumping-jack: cues 2 */
N_("Land softly, heels touch down")
/* Translators: jumping-jack: cues 3 */
N_("Knees in line with toes")
/* Translators: jumping-jack: cues 4 */
N_("Stay light and even")
/* Translators: jumping-jack: fault */
N_("Landing stiffly on the toes? Bend your knees, let the heels touch.")
/* Translators: jumping-jack: easier */
N_("Step out, one foot at a time, no jump.")
/* Translators: jumping-jack: harder */
N_("Star shape, jump from a squat, arms and legs wide.")
/* Translators: jumping-lunge: name */
N_("Jumping lunge")
/* Translators: jumping-lunge: another name */
N_("Lunge jump")
/* Translators: jumping-lunge: another name */
N_("Split jump")
/* Translators: jumping-lunge: setup */
N_("Stand with one foot a long step ahead, both knees bent, chest lifted.")
/* Translators: jumping-lunge: cues 1 */
N_("Land softly, sink straight down")
/* Translators: jumping-lunge: cues 2 */
N_("Switch legs in the air")
/* Translators: jumping-lunge: cues 3 */
N_("Front knee over the foot")
/* Translators: jumping-lunge: cues 4 */
N_("Swing your arms for balance")
/* Translators: jumping-lunge: fault */
N_("Landing as if on a tightrope? Keep your feet hip-width apart.")
/* Translators: jumping-lunge: easier */
N_("No jump, step back into each lunge.")
/* Translators: jumping-lunge: harder */
N_("Pause low, hold every landing for one count.")
/* Translators: kettlebell-clean: name */
N_("Kettlebell clean")
/* Translators: kettlebell-clean: another name */
N_("One-arm clean")
/* Translators: kettlebell-clean: to spare wrists, in lower case */
N_("loose grip, wrist straight at the top")
/* Translators: kettlebell-clean: setup */
N_("Kettlebell on the floor between your feet, one hand on the handle, hips back, back flat.")
/* Translators: kettlebell-clean: cues 1 */
N_("Stand up fast, elbow close")
/* Translators: kettlebell-clean: cues 2 */
N_("Let the bell roll round your wrist")
/* Translators: kettlebell-clean: cues 3 */
N_("Finish with your fist under your chin")
/* Translators: kettlebell-clean: cues 4 */
N_("Lower down the same path")
/* Translators: kettlebell-clean: fault */
N_("Kettlebell banging the forearm? Keep it close and loosen your grip.")
/* Translators: kettlebell-clean: easier */
N_("Two hands, lift the bell to standing, set it down.")
/* Translators: kettlebell-clean: harder */
N_("No set-down, swing it between your legs and go again.")
/* Translators: kettlebell-deadlift: name */
N_("Kettlebell deadlift")
/* Translators: kettlebell-deadlift: to spare lower-back, in lower case */
N_("start with the bell on a step")
/* Translators: kettlebell-deadlift: setup */
N_("Stand with the kettlebell between your ankles, feet a little wider than your hips, toes slightly out.")
/* Translators: kettlebell-deadlift: cues 1 */
N_("Push your hips back to reach down")
/* Translators: kettlebell-deadlift: cues 2 */
N_("Back flat, shoulders away from your ears")
/* Translators: kettlebell-deadlift: cues 3 */
N_("Push the floor away to stand")
/* Translators: kettlebell-deadlift: cues 4 */
N_("Touch the bell down softly")
/* Translators: kettlebell-deadlift: fault */
N_("Back rounding at the bottom? Bend your knees a little more.")
/* Translators: kettlebell-deadlift: easier */
N_("No bell, bow from the hips with a flat back.")
/* Translators: kettlebell-deadlift: harder */
N_("Swing it, drive the bell forward with a quick hip push.")
/* Translators: kettlebell-halo: name */
N_("Kettlebell halo")
/* Translators: kettlebell-halo: another name */
N_("Halo")
/* Translators: kettlebell-halo: to spare shoulders, in lower case */
N_("circle lower, in front of your chest")
/* Translators: kettlebell-halo: setup */
N_("Stand tall and hold a light kettlebell upside down by its handle at your chest.")
/* Translators: kettlebell-halo: cues 1 */
N_("Circle it slowly around your head")
/* Translators: kettlebell-halo: cues 2 */
N_("Keep it close, elbows bent")
/* Translators: kettlebell-halo: cues 3 */
N_("Tummy firm, head and hips still")
/* Translators: kettlebell-halo: cues 4 */
N_("Change direction after every circle")
/* Translators: kettlebell-halo: fault */
N_("Head ducking forward? Lift your elbows and move the weight instead.")
/* Translators: kettlebell-halo: easier */
N_("No weight, just slow arm circles.")
/* Translators: kettlebell-halo: harder */
N_("Feet together, circles slower and closer.")
/* Translators: kettlebell-high-pull: name */
N_("Kettlebell high pull")
/* Translators: kettlebell-high-pull: another name */
N_("Sumo high pull")
/* Translators: kettlebell-high-pull: to spare shoulders, in lower case */
N_("pull only as high as your ribs")
/* Translators: kettlebell-high-pull: setup */
N_("Stand with feet wide, toes out, kettlebell on the floor between your heels, both hands on it.")
/* Translators: kettlebell-high-pull: cues 1 */
N_("Legs first, then arms")
/* Translators: kettlebell-high-pull: cues 2 */
N_("Elbows lead, up and out")
/* Translators: kettlebell-high-pull: cues 3 */
N_("Keep the bell close to you")
/* Translators: kettlebell-high-pull: cues 4 */
N_("Lower slowly, back flat")
/* Translators: kettlebell-high-pull: fault */
N_("Pulling with the arms too early? Stand up fast, then pull.")
/* Translators: kettlebell-high-pull: easier */
N_("No pull, just stand up with the bell.")
/* Translators: kettlebell-high-pull: harder */
N_("Heavier bell, with the pull just as smooth.")
/* Translators: kettlebell-swing: name */
N_("Kettlebell swing")
/* Translators: kettlebell-swing: another name */
N_("Two-hand swing")
/* Translators: kettlebell-swing: to spare shoulders, in lower case */
N_("swing only to waist height")
/* Translators: kettlebell-swing: setup */
N_("Stand wider than your hips, kettlebell a foot-length ahead, both hands on the handle, back flat.")
/* Translators: kettlebell-swing: cues 1 */
N_("Snap your hips, arms only guide")
/* Translators: kettlebell-swing: cues 2 */
N_("Hips back, not knees down")
/* Translators: kettlebell-swing: cues 3 */
N_("Stand tall at the top")
/* Translators: kettlebell-swing: cues 4 */
N_("Let the bell fall, then fold")
/* Translators: kettlebell-swing: fault */
N_("Squatting and lifting with the arms? Push your hips back instead.")
/* Translators: kettlebell-swing: easier */
N_("No swing, lift the bell and set it down each time.")
/* Translators: kettlebell-swing: harder */
N_("Heavier bell, as long as your back stays flat.")
/* Translators: knee-hug: name */
N_("Knee hug")
/* Translators: knee-hug: another name */
N_("Standing knee to chest")
/* Translators: knee-hug: to spare balance, in lower case */
N_("with your back against a wall")
/* Translators: knee-hug: to spare knees, in lower case */
N_("hold behind the thigh, not the shin")
/* Translators: knee-hug: setup */
N_("Stand tall, feet together, eyes on one spot straight ahead.")
/* Translators: knee-hug: cues 1 */
N_("Draw one knee up high")
/* Translators: knee-hug: cues 2 */
N_("Hug it with both hands")
/* Translators: knee-hug: cues 3 */
N_("Standing leg long and strong")
/* Translators: knee-hug: cues 4 */
N_("Lower softly, then change")
/* Translators: knee-hug: fault */
N_("Back rounding? Stand tall and bring the knee to you.")
/* Translators: knee-hug: easier */
N_("Easy march, without holding the knee.")
/* Translators: knee-hug: harder */
N_("On your toes, each time you hug the knee.")
/* Translators: knee-plank: name */
N_("Knee plank")
/* Translators: knee-plank: another name */
N_("Kneeling plank")
/* Translators: knee-plank: another name */
N_("Half plank")
/* Translators: knee-plank: to spare knees, in lower case */
N_("folded towel under your knees")
/* Translators: knee-plank: to spare lower-back, in lower case */
N_("hips a touch higher")
/* Translators: knee-plank: setup */
N_("Rest on forearms and knees, elbows under shoulders, hips forward to make one straight line.")
/* Translators: knee-plank: cues 1 */
N_("One straight line, head to knees")
/* Translators: knee-plank: cues 2 */
N_("Squeeze your buttocks")
/* Translators: knee-plank: cues 3 */
N_("Push the floor away")
/* Translators: knee-plank: cues 4 */
N_("Breathe slowly")
/* Translators: knee-plank: fault */
N_("Hips up in the air? Slide them forward and down.")
/* Translators: knee-plank: easier */
N_("Shorter holds, knees nearer your elbows.")
/* Translators: knee-plank: harder */
N_("Knees up, legs long, on your toes.")
/* Translators: knee-push-up: name */
N_("Knee push-up")
/* Translators: knee-push-up: another name */
N_("Knee press-up")
/* Translators: knee-push-up: to spare wrists, in lower case */
N_("on fists or on dumbbells")
/* Translators: knee-push-up: to spare shoulders, in lower case */
N_("lower only halfway, elbows close")
/* Translators: knee-push-up: to spare knees, in lower case */
N_("fold the mat under your knees")
/* Translators: knee-push-up: setup */
N_("Kneel, hands a little wider than your shoulders, hips forward, straight from head to knees.")
/* Translators: knee-push-up: cues 1 */
N_("Keep head, hips and knees in line")
/* Translators: knee-push-up: cues 2 */
N_("Lower your chest between your hands")
/* Translators: knee-push-up: cues 3 */
N_("Elbows angled back")
/* Translators: knee-push-up: cues 4 */
N_("Press up smoothly")
/* Translators: knee-push-up: fault */
N_("Hips left behind? Bring them forward until your body is straight.")
/* Translators: knee-push-up: easier */
N_("Hands raised, on a sturdy chair against a wall.")
/* Translators: knee-push-up: harder */
N_("Knees up, on your toes in one line.")
/* Translators: knee-side-plank: name */
N_("Knee side plank")
/* Translators: knee-side-plank: another name */
N_("Kneeling side plank")
/* Translators: knee-side-plank: to spare shoulders, in lower case */
N_("shorter holds, top hand helps")
/* Translators: knee-side-plank: to spare neck, in lower case */
N_("top hand supports your head")
/* Translators: knee-side-plank: to spare knees, in lower case */
N_("cushion under your lower knee")
/* Translators: knee-side-plank: setup */
N_("Lie on one side, knees bent, elbow under your shoulder, then lift your hips.")
/* Translators: knee-side-plank: cues 1 */
N_("Straight line, head to knees")
/* Translators: knee-side-plank: cues 2 */
N_("Push the floor away")
/* Translators: knee-side-plank: cues 3 */
N_("Bring your hips forward")
/* Translators: knee-side-plank: cues 4 */
N_("Breathe slowly")
/* Translators: knee-side-plank: fault */
N_("Hips drifting back? Squeeze your buttocks and bring them forward.")
/* Translators: knee-side-plank: easier */
N_("Shorter holds, hips down in between.")
/* Translators: knee-side-plank: harder */
N_("Legs straight, balance on your feet.")
/* Translators: kneeling-hip-flexor-stretch: name */
N_("Kneeling hip-flexor stretch")
/* Translators: kneeling-hip-flexor-stretch: another name */
N_("Kneeling lunge stretch")
/* Translators: kneeling-hip-flexor-stretch: to spare knees, in lower case */
N_("on a cushion, or standing with feet staggered")
/* Translators: kneeling-hip-flexor-stretch: to spare lower-back, in lower case */
N_("tuck the hips and stay upright")
/* Translators: kneeling-hip-flexor-stretch: to spare balance, in lower case */
N_("one hand on a chair")
/* Translators: kneeling-hip-flexor-stretch: setup */
N_("Kneel on one knee, the other foot flat in front, and rest your hands on that thigh.")
/* Translators: kneeling-hip-flexor-stretch: cues 1 */
N_("Tuck the hips under first")
/* Translators: kneeling-hip-flexor-stretch: cues 2 */
N_("Squeeze your buttocks on the kneeling side")
/* Translators: kneeling-hip-flexor-stretch: cues 3 */
N_("Glide the hips gently forward")
/* Translators: kneeling-hip-flexor-stretch: cues 4 */
N_("Chest tall")
/* Translators: kneeling-hip-flexor-stretch: fault */
N_("Lower back arching? Tuck the hips before you move forward.")
/* Translators: kneeling-hip-flexor-stretch: easier */
N_("Cushion under knee, and stay upright without moving forward.")
/* Translators: kneeling-hip-flexor-stretch: harder */
N_("Arm up high, on the kneeling side.")
/* Translators: knees-to-chest: name */
N_("Knees to chest")
/* Translators: knees-to-chest: another name */
N_("Lying knee hug")
/* Translators: knees-to-chest: to spare knees, in lower case */
N_("hold behind the thighs, not the shins")
/* Translators: knees-to-chest: setup */
N_("Lie on your back, draw both knees in and hold them behind the thighs.")
/* Translators: knees-to-chest: cues 1 */
N_("Lower back settles into the mat")
/* Translators: knees-to-chest: cues 2 */
N_("Head and shoulders rest")
/* Translators: knees-to-chest: cues 3 */
N_("Elbows loose")
/* Translators: knees-to-chest: cues 4 */
N_("Breathe out and draw them closer")
/* Translators: knees-to-chest: fault */
N_("Pulling hard? Hold the legs loosely and breathe out.")
/* Translators: knees-to-chest: easier */
N_("One knee only, the other foot on the floor.")
/* Translators: knees-to-chest: harder */
N_("Knees closer in, and circle them slowly.")
/* Translators: lateral-raise: name */
N_("Lateral raise")
/* Translators: lateral-raise: another name */
N_("Side raise")
/* Translators: lateral-raise: to spare shoulders, in lower case */
N_("thumbs up, stop at chest height")
/* Translators: lateral-raise: setup */
N_("Stand tall, feet hip-width, a dumbbell in each hand by your sides, palms facing in.")
/* Translators: lateral-raise: cues 1 */
N_("Lift sideways to shoulder height")
/* Translators: lateral-raise: cues 2 */
N_("Elbows soft, leading the hands")
/* Translators: lateral-raise: cues 3 */
N_("Shoulders down, neck long")
/* Translators: lateral-raise: cues 4 */
N_("Lower more slowly than you lift")
/* Translators: lateral-raise: fault */
N_("Swinging or shrugging? Take lighter weights and keep your neck long.")
/* Translators: lateral-raise: easier */
N_("Elbows bent, lift to just below shoulder height.")
/* Translators: lateral-raise: harder */
N_("Longer pause, hold the top for two counts.")
/* Translators: lateral-shuffle: name */
N_("Lateral shuffle")
/* Translators: lateral-shuffle: another name */
N_("Side shuffle")
/* Translators: lateral-shuffle: to spare knees, in lower case */
N_("stay taller, slow down to turn")
/* Translators: lateral-shuffle: setup */
N_("Stand with feet wider than your hips, knees bent, hips back, hands in front.")
/* Translators: lateral-shuffle: cues 1 */
N_("Stay low, quick side steps")
/* Translators: lateral-shuffle: cues 2 */
N_("Push off the back foot")
/* Translators: lateral-shuffle: cues 3 */
N_("Feet apart, never crossing")
/* Translators: lateral-shuffle: cues 4 */
N_("Three across, three back")
/* Translators: lateral-shuffle: fault */
N_("Bobbing up and down? Keep your head at one height.")
/* Translators: lateral-shuffle: easier */
N_("Step and tap, standing taller.")
/* Translators: lateral-shuffle: harder */
N_("Stay lower, touch the floor at each end.")
/* Translators: leg-lowering: name */
N_("Leg lowering")
/* Translators: leg-lowering: another name */
N_("Double leg lower")
/* Translators: leg-lowering: to spare lower-back, in lower case */
N_("knees bent, lower only a little")
/* Translators: leg-lowering: to spare pelvic-floor, in lower case */
N_("one leg at a time")
/* Translators: leg-lowering: setup */
N_("Lie on your back, arms by your sides, both legs up towards the ceiling.")
/* Translators: leg-lowering: cues 1 */
N_("Press your lower back down")
/* Translators: leg-lowering: cues 2 */
N_("Lower both legs slowly")
/* Translators: leg-lowering: cues 3 */
N_("Stop before your back lifts")
/* Translators: leg-lowering: cues 4 */
N_("Breathe out on the way up")
/* Translators: leg-lowering: fault */
N_("Back lifting off the mat? Bend your knees or lower less far.")
/* Translators: leg-lowering: easier */
N_("Knees bent, one leg reaching away at a time.")
/* Translators: leg-lowering: harder */
N_("Fold up, arms and legs meeting above you.")
/* Translators: leg-swing-front-to-back: name */
N_("Leg swing front to back")
/* Translators: leg-swing-front-to-back: another name */
N_("Forward leg swing")
/* Translators: leg-swing-front-to-back: to spare balance, in lower case */
N_("hand on the wall, toes brushing the floor")
/* Translators: leg-swing-front-to-back: to spare lower-back, in lower case */
N_("small swings, mostly forward")
/* Translators: leg-swing-front-to-back: setup */
N_("Stand side-on to a wall, one hand on it, weight on the nearer leg.")
/* Translators: leg-swing-front-to-back: cues 1 */
N_("Swing the outer leg loosely")
/* Translators: leg-swing-front-to-back: cues 2 */
N_("Stay tall, upper body quiet")
/* Translators: leg-swing-front-to-back: cues 3 */
N_("Let the swing grow slowly")
/* Translators: leg-swing-front-to-back: cues 4 */
N_("Standing knee soft")
/* Translators: leg-swing-front-to-back: fault */
N_("Back arching as the leg goes behind? Swing less far.")
/* Translators: leg-swing-front-to-back: easier */
N_("Small swings, toes just brushing the floor.")
/* Translators: leg-swing-front-to-back: harder */
N_("Hand off wall, swinging slowly and standing tall.")
/* Translators: leg-swing-side-to-side: name */
N_("Leg swing side to side")
/* Translators: leg-swing-side-to-side: another name */
N_("Sideways leg swing")
/* Translators: leg-swing-side-to-side: to spare balance, in lower case */
N_("both hands on the wall, small swings")
/* Translators: leg-swing-side-to-side: to spare hips, in lower case */
N_("smaller swings, foot low")
/* Translators: leg-swing-side-to-side: setup */
N_("Face a wall, both hands on it, and shift your weight onto one leg.")
/* Translators: leg-swing-side-to-side: cues 1 */
N_("Swing across, then out wide")
/* Translators: leg-swing-side-to-side: cues 2 */
N_("Hips face the wall")
/* Translators: leg-swing-side-to-side: cues 3 */
N_("Small first, then wider")
/* Translators: leg-swing-side-to-side: cues 4 */
N_("Standing knee soft")
/* Translators: leg-swing-side-to-side: fault */
N_("Body tipping sideways? Stand tall and swing less high.")
/* Translators: leg-swing-side-to-side: easier */
N_("Small swings, foot low and close to the floor.")
/* Translators: leg-swing-side-to-side: harder */
N_("Fingertips only, with a slower, wider swing.")
/* Translators: line-hop: name */
N_("Line hop")
/* Translators: line-hop: another name */
N_("Side-to-side hop")
/* Translators: line-hop: setup */
N_("Stand beside a line on the floor, feet together, knees soft, elbows bent.")
/* Translators: line-hop: cues 1 */
N_("Hop low across the line")
/* Translators: line-hop: cues 2 */
N_("Land softly on both feet")
/* Translators: line-hop: cues 3 */
N_("Knees in line with toes")
/* Translators: line-hop: cues 4 */
N_("Chest stays over the line")
/* Translators: line-hop: fault */
N_("Landing stiffly? Bend your knees and make the hops smaller.")
/* Translators: line-hop: easier */
N_("No hop, step across and tap.")
/* Translators: line-hop: harder */
N_("Longer leaps, land on the outside foot.")
/* Translators: lunge-with-rotation: name */
N_("Lunge with rotation")
/* Translators: lunge-with-rotation: another name */
N_("Lunge and turn")
/* Translators: lunge-with-rotation: to spare wrists, in lower case */
N_("lean on a fist, not the palm")
/* Translators: lunge-with-rotation: to spare knees, in lower case */
N_("back knee down on a cushion")
/* Translators: lunge-with-rotation: to spare balance, in lower case */
N_("back knee down")
/* Translators: lunge-with-rotation: setup */
N_("Start on hands and toes, then step one foot forward beside your hand.")
/* Translators: lunge-with-rotation: cues 1 */
N_("Turn towards the front leg")
/* Translators: lunge-with-rotation: cues 2 */
N_("Reach that arm to the ceiling")
/* Translators: lunge-with-rotation: cues 3 */
N_("Back leg stays long")
/* Translators: lunge-with-rotation: cues 4 */
N_("Hand down, step back, change")
/* Translators: lunge-with-rotation: fault */
N_("Back leg going soft? Straighten it and push the heel away.")
/* Translators: lunge-with-rotation: easier */
N_("Back knee down, and turn only a little.")
/* Translators: lunge-with-rotation: harder */
N_("Slower turn, with a full breath at the top.")
/* Translators: lying-hamstring-stretch: name */
N_("Lying hamstring stretch")
/* Translators: lying-hamstring-stretch: another name */
N_("Lying leg stretch")
/* Translators: lying-hamstring-stretch: to spare lower-back, in lower case */
N_("raise the leg only halfway")
/* Translators: lying-hamstring-stretch: setup */
N_("Lie on your back, one knee bent, and hold the other leg up behind its thigh.")
/* Translators: lying-hamstring-stretch: cues 1 */
N_("Straighten the knee gently")
/* Translators: lying-hamstring-stretch: cues 2 */
N_("Heel towards the ceiling")
/* Translators: lying-hamstring-stretch: cues 3 */
N_("Both hips stay on the floor")
/* Translators: lying-hamstring-stretch: cues 4 */
N_("Head and shoulders heavy")
/* Translators: lying-hamstring-stretch: fault */
N_("Hips lifting? Lower the leg until they rest again.")
/* Translators: lying-hamstring-stretch: easier */
N_("Towel around foot, and keep that knee soft.")
/* Translators: lying-hamstring-stretch: harder */
N_("Lower leg long, heel reaching across the floor.")
/* Translators: lying-twist: name */
N_("Lying twist")
/* Translators: lying-twist: another name */
N_("Lying spinal twist")
/* Translators: lying-twist: to spare lower-back, in lower case */
N_("cushion under knees, part way only")
/* Translators: lying-twist: to spare shoulders, in lower case */
N_("elbows bent, arms lower")
/* Translators: lying-twist: setup */
N_("Lie on your back, arms out wide, knees bent, and lower both knees to one side.")
/* Translators: lying-twist: cues 1 */
N_("Both shoulders stay heavy")
/* Translators: lying-twist: cues 2 */
N_("Knees stay together")
/* Translators: lying-twist: cues 3 */
N_("Turn your head the other way")
/* Translators: lying-twist: cues 4 */
N_("Let each breath out loosen you")
/* Translators: lying-twist: fault */
N_("Far shoulder lifting? Bring the knees back up a little.")
/* Translators: lying-twist: easier */
N_("Cushion under knees, so they rest part way down.")
/* Translators: lying-twist: harder */
N_("Top leg straight, reaching long across the floor.")
/* Translators: march-on-the-spot: name */
N_("March on the spot")
/* Translators: march-on-the-spot: another name */
N_("Marching in place")
/* Translators: march-on-the-spot: to spare balance, in lower case */
N_("one hand on a wall or chair")
/* Translators: march-on-the-spot: setup */
N_("Stand tall with your feet hip-width apart, arms loose and shoulders relaxed.")
/* Translators: march-on-the-spot: cues 1 */
N_("Lift one knee, then the other")
/* Translators: march-on-the-spot: cues 2 */
N_("Swing the opposite arm")
/* Translators: march-on-the-spot: cues 3 */
N_("Grow taller with every step")
/* Translators: march-on-the-spot: cues 4 */
N_("Set each foot down quietly")
/* Translators: march-on-the-spot: fault */
N_("Slumping forward? Lift your chest and look straight ahead.")
/* Translators: march-on-the-spot: easier */
N_("Lower knees, one hand on a wall.")
/* Translators: march-on-the-spot: harder */
N_("Jog gently, small and soft steps.")
/* Translators: march-with-arm-swing: name */
N_("March with arm swing")
/* Translators: march-with-arm-swing: another name */
N_("March and swing")
/* Translators: march-with-arm-swing: to spare balance, in lower case */
N_("one hand on a wall, low knees")
/* Translators: march-with-arm-swing: setup */
N_("Stand tall, feet hip-width apart, elbows bent, and begin to march on the spot.")
/* Translators: march-with-arm-swing: cues 1 */
N_("Opposite arm, opposite knee")
/* Translators: march-with-arm-swing: cues 2 */
N_("Swing from the shoulders")
/* Translators: march-with-arm-swing: cues 3 */
N_("Land softly, whole foot")
/* Translators: march-with-arm-swing: cues 4 */
N_("Stay tall and easy")
/* Translators: march-with-arm-swing: fault */
N_("Leaning back? Stand tall and lift the knees a little less.")
/* Translators: march-with-arm-swing: easier */
N_("Lower knees, and smaller swings of the arms.")
/* Translators: march-with-arm-swing: harder */
N_("Light jog, on the spot, landing softly.")
/* Translators: medicine-ball-chest-pass: name */
N_("Medicine ball chest pass")
/* Translators: medicine-ball-chest-pass: another name */
N_("Wall pass")
/* Translators: medicine-ball-chest-pass: to spare wrists, in lower case */
N_("lighter, softer ball")
/* Translators: medicine-ball-chest-pass: to spare shoulders, in lower case */
N_("step closer, throw gently")
/* Translators: medicine-ball-chest-pass: setup */
N_("Stand two steps from a solid wall, knees soft, holding the ball at your chest.")
/* Translators: medicine-ball-chest-pass: cues 1 */
N_("Push the ball straight at the wall")
/* Translators: medicine-ball-chest-pass: cues 2 */
N_("Firm your tummy as you throw")
/* Translators: medicine-ball-chest-pass: cues 3 */
N_("Catch it with soft elbows")
/* Translators: medicine-ball-chest-pass: cues 4 */
N_("Bring it back to your chest")
/* Translators: medicine-ball-chest-pass: fault */
N_("Leaning back to throw? Take a lighter ball.")
/* Translators: medicine-ball-chest-pass: easier */
N_("Step closer, and throw more gently.")
/* Translators: medicine-ball-chest-pass: harder */
N_("Step back, and throw faster.")
/* Translators: medicine-ball-slam: name */
N_("Medicine ball slam")
/* Translators: medicine-ball-slam: another name */
N_("Ball throw-down")
/* Translators: medicine-ball-slam: to spare lower-back, in lower case */
N_("lighter ball, squat for every pick-up")
/* Translators: medicine-ball-slam: to spare shoulders, in lower case */
N_("start each throw from chest height")
/* Translators: medicine-ball-slam: to spare knees, in lower case */
N_("lift the ball from a low box")
/* Translators: medicine-ball-slam: setup */
N_("Stand with feet shoulder-width apart, holding a soft ball that does not bounce.")
/* Translators: medicine-ball-slam: cues 1 */
N_("Reach the ball overhead, rising tall")
/* Translators: medicine-ball-slam: cues 2 */
N_("Throw it down ahead of your toes")
/* Translators: medicine-ball-slam: cues 3 */
N_("Bend hips and knees as it lands")
/* Translators: medicine-ball-slam: cues 4 */
N_("Squat down to pick it up")
/* Translators: medicine-ball-slam: fault */
N_("Stooping for the ball? Bend your knees and keep it close.")
/* Translators: medicine-ball-slam: easier */
N_("Lower lift, starting each throw from chest height.")
/* Translators: medicine-ball-slam: harder */
N_("Heavier ball, thrown just as fast.")
/* Translators: mountain-climber: name */
N_("Mountain climber")
/* Translators: mountain-climber: another name */
N_("Running plank")
/* Translators: mountain-climber: to spare wrists, in lower case */
N_("forearms on a sturdy bench")
/* Translators: mountain-climber: to spare lower-back, in lower case */
N_("slower, knee in less far")
/* Translators: mountain-climber: setup */
N_("Start on your hands and toes, arms straight, body in one long line from head to heels.")
/* Translators: mountain-climber: cues 1 */
N_("Hips level with your shoulders")
/* Translators: mountain-climber: cues 2 */
N_("Drive one knee in, then swap")
/* Translators: mountain-climber: cues 3 */
N_("Push the floor away")
/* Translators: mountain-climber: cues 4 */
N_("Light, quiet feet")
/* Translators: mountain-climber: fault */
N_("Hips bouncing up? Slow down and push the floor away.")
/* Translators: mountain-climber: easier */
N_("Step slowly, one knee in at a time.")
/* Translators: mountain-climber: harder */
N_("Quicker feet, hips just as still.")
/* Translators: neck-side-stretch: name */
N_("Neck side stretch")
/* Translators: neck-side-stretch: another name */
N_("Ear-to-shoulder stretch")
/* Translators: neck-side-stretch: to spare neck, in lower case */
N_("a smaller tilt, no hand")
/* Translators: neck-side-stretch: setup */
N_("Sit tall, shoulders loose, and let one ear sink towards its shoulder.")
/* Translators: neck-side-stretch: cues 1 */
N_("Opposite shoulder stays low")
/* Translators: neck-side-stretch: cues 2 */
N_("Face straight ahead")
/* Translators: neck-side-stretch: cues 3 */
N_("Teeth apart, jaw loose")
/* Translators: neck-side-stretch: cues 4 */
N_("Slow breath out")
/* Translators: neck-side-stretch: fault */
N_("Far shoulder rising? Reach that hand down towards the floor.")
/* Translators: neck-side-stretch: easier */
N_("Smaller tilt, just until you feel it begin.")
/* Translators: neck-side-stretch: harder */
N_("Hand on head, resting only, without pulling.")
/* Translators: neck-turns: name */
N_("Neck turns")
/* Translators: neck-turns: another name */
N_("Head turns")
/* Translators: neck-turns: to spare neck, in lower case */
N_("smaller, slower turns")
/* Translators: neck-turns: setup */
N_("Stand tall, shoulders loose, chin level, and look straight ahead.")
/* Translators: neck-turns: cues 1 */
N_("Look slowly over one shoulder")
/* Translators: neck-turns: cues 2 */
N_("Pause, then the other side")
/* Translators: neck-turns: cues 3 */
N_("Chin stays level")
/* Translators: neck-turns: cues 4 */
N_("Keep breathing")
/* Translators: neck-turns: fault */
N_("Shoulders turning too? Keep your chest facing forward.")
/* Translators: neck-turns: easier */
N_("Smaller turn, only as far as feels easy.")
/* Translators: one-arm-row: name */
N_("One-arm row")
/* Translators: one-arm-row: another name */
N_("Single-arm row")
/* Translators: one-arm-row: another name */
N_("Supported dumbbell row")
/* Translators: one-arm-row: to spare lower-back, in lower case */
N_("higher support, chest more upright")
/* Translators: one-arm-row: setup */
N_("Lean on a sturdy chair with one hand, a dumbbell in the other, back flat.")
/* Translators: one-arm-row: cues 1 */
N_("Pull your elbow up past your ribs")
/* Translators: one-arm-row: cues 2 */
N_("Keep both shoulders level")
/* Translators: one-arm-row: cues 3 */
N_("Elbow close to your side")
/* Translators: one-arm-row: cues 4 */
N_("Lower until your arm is long")
/* Translators: one-arm-row: fault */
N_("Twisting open? Keep your chest facing the floor.")
/* Translators: one-arm-row: easier */
N_("Less weight, pulling slowly and smoothly.")
/* Translators: one-arm-row: harder */
N_("Both arms, leaning forward without support.")
/* Translators: open-book: name */
N_("Open book")
/* Translators: open-book: another name */
N_("Side-lying turn")
/* Translators: open-book: to spare neck, in lower case */
N_("head on a cushion")
/* Translators: open-book: to spare shoulders, in lower case */
N_("arm bent, hand on the ribs")
/* Translators: open-book: setup */
N_("Lie on your side, knees bent at hip height, arms straight in front, palms together.")
/* Translators: open-book: cues 1 */
N_("Lift the top arm up and over")
/* Translators: open-book: cues 2 */
N_("Eyes follow your hand")
/* Translators: open-book: cues 3 */
N_("Knees stay together")
/* Translators: open-book: cues 4 */
N_("Breathe out as you open")
/* Translators: open-book: fault */
N_("Top knee sliding back? Press the knees together and open less.")
/* Translators: open-book: easier */
N_("Bent top arm, hand resting on your ribs.")
/* Translators: open-book: harder */
N_("Pause when open, for one full breath.")
/* Translators: overhead-triceps-extension: name */
N_("Overhead triceps extension")
/* Translators: overhead-triceps-extension: another name */
N_("French press")
/* Translators: overhead-triceps-extension: to spare lower-back, in lower case */
N_("stand with one foot ahead")
/* Translators: overhead-triceps-extension: to spare pressure, in lower case */
N_("keep breathing, no long holds")
/* Translators: overhead-triceps-extension: setup */
N_("Stand tall, one dumbbell held in both hands above your head, elbows beside your ears.")
/* Translators: overhead-triceps-extension: cues 1 */
N_("Lower the weight behind your head")
/* Translators: overhead-triceps-extension: cues 2 */
N_("Elbows still, pointing forward")
/* Translators: overhead-triceps-extension: cues 3 */
N_("Ribs down, tummy firm")
/* Translators: overhead-triceps-extension: cues 4 */
N_("Straighten your arms smoothly")
/* Translators: overhead-triceps-extension: fault */
N_("Lower back arching? Draw your ribs down and firm your tummy.")
/* Translators: overhead-triceps-extension: easier */
N_("Halfway down, stop when your elbows form a right angle.")
/* Translators: overhead-triceps-extension: harder */
N_("Slower down, count three behind your head.")
/* Translators: overhead-triceps-stretch: name */
N_("Overhead triceps stretch")
/* Translators: overhead-triceps-stretch: another name */
N_("Back-of-arm stretch")
/* Translators: overhead-triceps-stretch: to spare shoulders, in lower case */
N_("elbow in front of the face")
/* Translators: overhead-triceps-stretch: setup */
N_("Stand tall, raise one arm, bend it, and let that hand drop behind your neck.")
/* Translators: overhead-triceps-stretch: cues 1 */
N_("Other hand guides the elbow back")
/* Translators: overhead-triceps-stretch: cues 2 */
N_("Elbow points to the ceiling")
/* Translators: overhead-triceps-stretch: cues 3 */
N_("Chin level, neck free")
/* Translators: overhead-triceps-stretch: cues 4 */
N_("Back long, no arching")
/* Translators: overhead-triceps-stretch: fault */
N_("Head pushed forward? Lift it and ease the pull.")
/* Translators: overhead-triceps-stretch: easier */
N_("Elbow in front, pushed up gently from below.")
/* Translators: overhead-triceps-stretch: harder */
N_("Lean slightly sideways, away from the raised elbow.")
/* Translators: partner-high-five-plank: name */
N_("Partner high-five plank")
/* Translators: partner-high-five-plank: another name */
N_("Plank with a clap")
/* Translators: partner-high-five-plank: to spare wrists, in lower case */
N_("on forearms, touching fingertips")
/* Translators: partner-high-five-plank: to spare shoulders, in lower case */
N_("knees down, or hold still")
/* Translators: partner-high-five-plank: to spare lower-back, in lower case */
N_("feet wide, hips level")
/* Translators: partner-high-five-plank: setup */
N_("On hands and toes, face your partner a forearm apart, feet wide.")
/* Translators: partner-high-five-plank: cues 1 */
N_("Clap right hand to right hand")
/* Translators: partner-high-five-plank: cues 2 */
N_("Put it down, then clap left")
/* Translators: partner-high-five-plank: cues 3 */
N_("Hips stay level and quiet")
/* Translators: partner-high-five-plank: cues 4 */
N_("Push the floor away")
/* Translators: partner-high-five-plank: fault */
N_("Hips swaying? Spread your feet and clap more slowly.")
/* Translators: partner-high-five-plank: easier */
N_("Hands down, and hold the plank together.")
/* Translators: partner-high-five-plank: harder */
N_("Feet together, pausing on every clap.")
/* Translators: partner-mirror-step: name */
N_("Partner mirror step")
/* Translators: partner-mirror-step: another name */
N_("Follow my steps")
/* Translators: partner-mirror-step: to spare knees, in lower case */
N_("stand taller, smaller steps")
/* Translators: partner-mirror-step: to spare balance, in lower case */
N_("slow steps, one direction at a time")
/* Translators: partner-mirror-step: setup */
N_("Face your partner two steps apart, knees soft, and choose who leads first.")
/* Translators: partner-mirror-step: cues 1 */
N_("Mirror your partner's sideways steps")
/* Translators: partner-mirror-step: cues 2 */
N_("Small, quick, quiet feet")
/* Translators: partner-mirror-step: cues 3 */
N_("Feet never cross")
/* Translators: partner-mirror-step: cues 4 */
N_("Change leader halfway")
/* Translators: partner-mirror-step: fault */
N_("Losing each other? The leader slows down and moves less.")
/* Translators: partner-mirror-step: easier */
N_("Step and touch, side to side, keeping time together.")
/* Translators: partner-mirror-step: harder */
N_("Shuffle faster, sitting lower, changing direction without warning.")
/* Translators: partner-palm-press: name */
N_("Partner palm press")
/* Translators: partner-palm-press: another name */
N_("Palm-to-palm press")
/* Translators: partner-palm-press: to spare wrists, in lower case */
N_("loose fists, knuckles together")
/* Translators: partner-palm-press: to spare shoulders, in lower case */
N_("hands lower, shorter push")
/* Translators: partner-palm-press: setup */
N_("Face your partner, one foot forward, palms together at chest height, elbows bent.")
/* Translators: partner-palm-press: cues 1 */
N_("One pushes, the other gently resists")
/* Translators: partner-palm-press: cues 2 */
N_("Hands travel slowly, then change roles")
/* Translators: partner-palm-press: cues 3 */
N_("Stand firm through both feet")
/* Translators: partner-palm-press: cues 4 */
N_("Keep breathing as you push")
/* Translators: partner-palm-press: fault */
N_("Turning into a contest? Use half the force and slow down.")
/* Translators: partner-palm-press: easier */
N_("Lighter push, with a short movement of the arms.")
/* Translators: partner-palm-press: harder */
N_("Firmer resistance, taking four counts each way.")
/* Translators: partner-squat: name */
N_("Partner squat")
/* Translators: partner-squat: another name */
N_("Counterbalance squat")
/* Translators: partner-squat: to spare knees, in lower case */
N_("sit only halfway")
/* Translators: partner-squat: to spare grip, in lower case */
N_("hold each other's forearms")
/* Translators: partner-squat: to spare balance, in lower case */
N_("lean back less, sit halfway")
/* Translators: partner-squat: setup */
N_("Face your partner at arm's length, feet hip-width apart, holding each other's wrists.")
/* Translators: partner-squat: cues 1 */
N_("Lean back a little, arms long")
/* Translators: partner-squat: cues 2 */
N_("Sit down together, slowly")
/* Translators: partner-squat: cues 3 */
N_("Heels stay down")
/* Translators: partner-squat: cues 4 */
N_("Stand up at the same speed")
/* Translators: partner-squat: fault */
N_("One of you pulling? Step closer and share the lean evenly.")
/* Translators: partner-squat: easier */
N_("Halfway down, at a pace that suits you both.")
/* Translators: partner-squat: harder */
N_("Pause low, for three breaths together.")
/* Translators: pause-squat: name */
N_("Pause squat")
/* Translators: pause-squat: another name */
N_("Squat with a hold")
/* Translators: pause-squat: to spare knees, in lower case */
N_("pause a little higher")
/* Translators: pause-squat: to spare ankles, in lower case */
N_("heels on a folded towel")
/* Translators: pause-squat: to spare pressure, in lower case */
N_("shorter pause, keep breathing")
/* Translators: pause-squat: setup */
N_("Stand with your feet a little wider than your hips, arms reaching forward.")
/* Translators: pause-squat: cues 1 */
N_("Sit back and down slowly")
/* Translators: pause-squat: cues 2 */
N_("Hold low for two counts")
/* Translators: pause-squat: cues 3 */
N_("Keep breathing, chest lifted")
/* Translators: pause-squat: cues 4 */
N_("Stand up through your heels")
/* Translators: pause-squat: fault */
N_("Sinking into the hold? Stay higher and keep your thighs working.")
/* Translators: pause-squat: easier */
N_("No pause, just down and up.")
/* Translators: pause-squat: harder */
N_("Small pulses, staying low throughout.")
/* Translators: pelvic-tilt: name */
N_("Pelvic tilt")
/* Translators: pelvic-tilt: another name */
N_("Lying pelvic tilt")
/* Translators: pelvic-tilt: setup */
N_("Lie on your back, knees bent, feet flat, arms relaxed by your sides.")
/* Translators: pelvic-tilt: cues 1 */
N_("Gently press your lower back down")
/* Translators: pelvic-tilt: cues 2 */
N_("Breathe out as you press")
/* Translators: pelvic-tilt: cues 3 */
N_("Let go slowly, breathing in")
/* Translators: pelvic-tilt: cues 4 */
N_("Legs and shoulders stay relaxed")
/* Translators: pelvic-tilt: fault */
N_("Pushing with your feet? Relax your legs and let your tummy work.")
/* Translators: pelvic-tilt: easier */
N_("Smaller movement, only as far as feels good.")
/* Translators: pelvic-tilt: harder */
N_("Feet up, opposite arm and leg reach away.")
/* Translators: pike-push-up: name */
N_("Pike push-up")
/* Translators: pike-push-up: another name */
N_("Pike press-up")
/* Translators: pike-push-up: to spare wrists, in lower case */
N_("on fists or on dumbbells")
/* Translators: pike-push-up: to spare shoulders, in lower case */
N_("lower only a little")
/* Translators: pike-push-up: to spare pressure, in lower case */
N_("hips lower, as in an ordinary push-up")
/* Translators: pike-push-up: to spare neck, in lower case */
N_("look between your feet")
/* Translators: pike-push-up: setup */
N_("From a high plank, walk your feet in and lift your hips high.")
/* Translators: pike-push-up: cues 1 */
N_("Lower your head just past your hands")
/* Translators: pike-push-up: cues 2 */
N_("Elbows angled back")
/* Translators: pike-push-up: cues 3 */
N_("Hips stay high")
/* Translators: pike-push-up: cues 4 */
N_("Push the floor away")
/* Translators: pike-push-up: fault */
N_("Hips sinking? Walk your feet a little closer and bend your knees.")
/* Translators: pike-push-up: easier */
N_("Hips lower, as in an ordinary push-up.")
/* Translators: pike-push-up: harder */
N_("Four counts down, then press up smoothly.")
/* Translators: plank: name */
N_("Plank")
/* Translators: plank: another name */
N_("Forearm plank")
/* Translators: plank: another name */
N_("Front plank")
/* Translators: plank: to spare lower-back, in lower case */
N_("knees down, hips a touch higher")
/* Translators: plank: to spare pressure, in lower case */
N_("short holds, never hold your breath")
/* Translators: plank: setup */
N_("Rest on your forearms, elbows under your shoulders, legs long, and lift up onto your toes.")
/* Translators: plank: cues 1 */
N_("One straight line, head to heels")
/* Translators: plank: cues 2 */
N_("Squeeze your buttocks")
/* Translators: plank: cues 3 */
N_("Press your forearms into the floor")
/* Translators: plank: cues 4 */
N_("Keep breathing")
/* Translators: plank: fault */
N_("Hips sagging? Tuck your hips under and draw your tummy in.")
/* Translators: plank: easier */
N_("Knees down, same straight line.")
/* Translators: plank: harder */
N_("Up and down, from forearms to hands and back.")
/* Translators: plank-jack: name */
N_("Plank jack")
/* Translators: plank-jack: another name */
N_("Jumping plank")
/* Translators: plank-jack: to spare wrists, in lower case */
N_("on your forearms")
/* Translators: plank-jack: to spare pelvic-floor, in lower case */
N_("step one foot wide at a time")
/* Translators: plank-jack: setup */
N_("Hands under your shoulders, legs long behind you, feet together, body in one straight line.")
/* Translators: plank-jack: cues 1 */
N_("Jump feet wide, then together")
/* Translators: plank-jack: cues 2 */
N_("Hips stay level")
/* Translators: plank-jack: cues 3 */
N_("Push the floor away")
/* Translators: plank-jack: cues 4 */
N_("Land lightly on your toes")
/* Translators: plank-jack: fault */
N_("Hips bouncing up? Make the jumps smaller and keep your tummy firm.")
/* Translators: plank-jack: easier */
N_("No jump, hold the plank, tap one foot wide.")
/* Translators: plank-jack: harder */
N_("Push-up, add one after every four jumps.")
/* Translators: plank-up-down: name */
N_("Plank up-down")
/* Translators: plank-up-down: another name */
N_("Up-down plank")
/* Translators: plank-up-down: another name */
N_("Forearm plank to high plank")
/* Translators: plank-up-down: to spare wrists, in lower case */
N_("on fists, or stay on your forearms")
/* Translators: plank-up-down: to spare shoulders, in lower case */
N_("knees down, move slowly")
/* Translators: plank-up-down: to spare lower-back, in lower case */
N_("knees down, tummy firm")
/* Translators: plank-up-down: setup */
N_("Start in a plank on your forearms, feet wider than your hips.")
/* Translators: plank-up-down: cues 1 */
N_("Press up, one hand then the other")
/* Translators: plank-up-down: cues 2 */
N_("Lower again, elbow by elbow")
/* Translators: plank-up-down: cues 3 */
N_("Hips level all the way")
/* Translators: plank-up-down: cues 4 */
N_("Change the leading arm each time")
/* Translators: plank-up-down: fault */
N_("Hips swinging? Take your feet wider and slow down.")
/* Translators: plank-up-down: easier */
N_("Hold still, in a plank on your forearms.")
/* Translators: plank-up-down: harder */
N_("Stay high, with a push-up and shoulder taps.")
/* Translators: pogo-hop: name */
N_("Pogo hop")
/* Translators: pogo-hop: another name */
N_("Pogo jump")
/* Translators: pogo-hop: another name */
N_("Ankle hop")
/* Translators: pogo-hop: setup */
N_("Stand tall, feet hip-width, knees soft, hands on your hips.")
/* Translators: pogo-hop: cues 1 */
N_("Spring from your ankles")
/* Translators: pogo-hop: cues 2 */
N_("Quick and light off the floor")
/* Translators: pogo-hop: cues 3 */
N_("Body tall, knees barely bend")
/* Translators: pogo-hop: fault */
N_("Sinking into the knees? Make smaller hops, quicker off the floor.")
/* Translators: pogo-hop: easier */
N_("No hop, rise onto your toes and lower.")
/* Translators: pogo-hop: harder */
N_("Side to side, hop over a line.")
/* Translators: prone-press-up-stretch: name */
N_("Prone press-up stretch")
/* Translators: prone-press-up-stretch: another name */
N_("Cobra stretch")
/* Translators: prone-press-up-stretch: another name */
N_("Lying back-bend")
/* Translators: prone-press-up-stretch: to spare lower-back, in lower case */
N_("stay low, on the forearms")
/* Translators: prone-press-up-stretch: to spare wrists, in lower case */
N_("stay on the forearms")
/* Translators: prone-press-up-stretch: setup */
N_("Lie on your front, hands under your shoulders, legs long and relaxed behind you.")
/* Translators: prone-press-up-stretch: cues 1 */
N_("Press the chest up slowly")
/* Translators: prone-press-up-stretch: cues 2 */
N_("Hips stay heavy on the floor")
/* Translators: prone-press-up-stretch: cues 3 */
N_("Shoulders away from the ears")
/* Translators: prone-press-up-stretch: cues 4 */
N_("Look straight ahead")
/* Translators: prone-press-up-stretch: fault */
N_("Hips lifting off? Come lower until they rest.")
/* Translators: prone-press-up-stretch: easier */
N_("On your forearms, elbows under the shoulders.")
/* Translators: prone-press-up-stretch: harder */
N_("Arms almost straight, hips still on the floor.")
/* Translators: prone-w-raise: name */
N_("Prone W raise")
/* Translators: prone-w-raise: another name */
N_("W lift")
/* Translators: prone-w-raise: to spare neck, in lower case */
N_("rest your forehead on the mat")
/* Translators: prone-w-raise: to spare lower-back, in lower case */
N_("lift only the arms, chest down")
/* Translators: prone-w-raise: setup */
N_("Lie face down, elbows bent by your sides, hands beside your shoulders like a W.")
/* Translators: prone-w-raise: cues 1 */
N_("Squeeze your shoulder blades together")
/* Translators: prone-w-raise: cues 2 */
N_("Lift elbows, hands and chest a little")
/* Translators: prone-w-raise: cues 3 */
N_("Eyes down, neck long")
/* Translators: prone-w-raise: cues 4 */
N_("Lower slowly and softly")
/* Translators: prone-w-raise: fault */
N_("Chin lifting? Look at the mat and keep your neck long.")
/* Translators: prone-w-raise: easier */
N_("Forehead down, lifting only your arms.")
/* Translators: prone-w-raise: harder */
N_("Arms long, in a Y above your head.")
/* Translators: prone-y-raise: name */
N_("Prone Y raise")
/* Translators: prone-y-raise: another name */
N_("Y lift")
/* Translators: prone-y-raise: to spare shoulders, in lower case */
N_("take your arms wider and lower")
/* Translators: prone-y-raise: to spare neck, in lower case */
N_("rest your forehead on the mat")
/* Translators: prone-y-raise: to spare lower-back, in lower case */
N_("lift only the arms, chest down")
/* Translators: prone-y-raise: setup */
N_("Lie face down, arms stretched overhead in a Y, thumbs up.")
/* Translators: prone-y-raise: cues 1 */
N_("Lift your arms, thumbs leading")
/* Translators: prone-y-raise: cues 2 */
N_("Reach long rather than high")
/* Translators: prone-y-raise: cues 3 */
N_("Eyes down, neck long")
/* Translators: prone-y-raise: cues 4 */
N_("Lower slowly and softly")
/* Translators: prone-y-raise: fault */
N_("Shoulders bunching up? Slide them away from your ears before you lift.")
/* Translators: prone-y-raise: easier */
N_("Elbows bent, arms in a W.")
/* Translators: prone-y-raise: harder */
N_("Sweep your arms, from overhead down to your hips.")
/* Translators: pulse-squat: name */
N_("Pulse squat")
/* Translators: pulse-squat: another name */
N_("Squat pulse")
/* Translators: pulse-squat: to spare knees, in lower case */
N_("stay higher, with smaller pulses")
/* Translators: pulse-squat: to spare pressure, in lower case */
N_("stand up often, keep breathing")
/* Translators: pulse-squat: setup */
N_("Set your feet a little wider than your hips, then sit into a squat and stay.")
/* Translators: pulse-squat: cues 1 */
N_("Rise and sink a hand's width")
/* Translators: pulse-squat: cues 2 */
N_("Stay low, chest lifted")
/* Translators: pulse-squat: cues 3 */
N_("Heels down, knees over toes")
/* Translators: pulse-squat: cues 4 */
N_("Keep breathing evenly")
/* Translators: pulse-squat: fault */
N_("Rising a bit each time? Rest briefly, then sit low again.")
/* Translators: pulse-squat: easier */
N_("Pause instead, then stand up between squats.")
/* Translators: pulse-squat: harder */
N_("Jump up, landing softly in your squat.")
/* Translators: push-press: name */
N_("Push press")
/* Translators: push-press: another name */
N_("Press with leg drive")
/* Translators: push-press: to spare shoulders, in lower case */
N_("palms facing, stop at forehead height")
/* Translators: push-press: to spare knees, in lower case */
N_("a smaller dip")
/* Translators: push-press: to spare lower-back, in lower case */
N_("smaller dip, tummy firm")
/* Translators: push-press: to spare pelvic-floor, in lower case */
N_("breathe out as you press")
/* Translators: push-press: to spare pressure, in lower case */
N_("lighter weights, keep breathing")
/* Translators: push-press: setup */
N_("Stand with feet hip-width apart, a dumbbell at each shoulder, elbows slightly forward.")
/* Translators: push-press: cues 1 */
N_("Dip a little, heels down")
/* Translators: push-press: cues 2 */
N_("Drive up through your legs")
/* Translators: push-press: cues 3 */
N_("Finish arms straight, beside your ears")
/* Translators: push-press: cues 4 */
N_("Lower slowly, knees soft")
/* Translators: push-press: fault */
N_("Dip turning into a squat? Keep it short, chest upright.")
/* Translators: push-press: easier */
N_("No leg drive, just press with your arms.")
/* Translators: push-press: harder */
N_("Full squat, then press as you stand.")
/* Translators: push-up: name */
N_("Push-up")
/* Translators: push-up: another name */
N_("Press-up")
/* Translators: push-up: to spare wrists, in lower case */
N_("on fists or on dumbbells")
/* Translators: push-up: to spare shoulders, in lower case */
N_("lower only halfway, elbows close")
/* Translators: push-up: to spare lower-back, in lower case */
N_("knees down, tummy firm")
/* Translators: push-up: setup */
N_("Place your hands a little wider than your shoulders, legs long, body in one line.")
/* Translators: push-up: cues 1 */
N_("One line from head to heels")
/* Translators: push-up: cues 2 */
N_("Lower your chest between your hands")
/* Translators: push-up: cues 3 */
N_("Elbows angled back, not straight out")
/* Translators: push-up: cues 4 */
N_("Push the floor away")
/* Translators: push-up: fault */
N_("Hips sagging? Squeeze your buttocks and firm your tummy.")
/* Translators: push-up: easier */
N_("Knees down, body straight from head to knees.")
/* Translators: push-up: harder */
N_("Hands closer, elbows brushing your ribs.")
/* Translators: push-up-to-shoulder-tap: name */
N_("Push-up to shoulder tap")
/* Translators: push-up-to-shoulder-tap: another name */
N_("Push-up and tap")
/* Translators: push-up-to-shoulder-tap: to spare wrists, in lower case */
N_("on fists or on dumbbells")
/* Translators: push-up-to-shoulder-tap: to spare shoulders, in lower case */
N_("knees down, feather-light taps")
/* Translators: push-up-to-shoulder-tap: to spare lower-back, in lower case */
N_("knees down, tummy firm")
/* Translators: push-up-to-shoulder-tap: setup */
N_("Start in a high plank, hands under your shoulders, feet wider than your hips.")
/* Translators: push-up-to-shoulder-tap: cues 1 */
N_("One push-up, chest between your hands")
/* Translators: push-up-to-shoulder-tap: cues 2 */
N_("Tap each shoulder with the opposite hand")
/* Translators: push-up-to-shoulder-tap: cues 3 */
N_("Keep your hips level as you tap")
/* Translators: push-up-to-shoulder-tap: cues 4 */
N_("Set each hand down softly")
/* Translators: push-up-to-shoulder-tap: fault */
N_("Rocking from side to side? Step your feet wider and slow down.")
/* Translators: push-up-to-shoulder-tap: easier */
N_("Taps only, without the push-up.")
/* Translators: push-up-to-shoulder-tap: harder */
N_("Feet together, hips still as you tap.")
/* Translators: quiet-lying-breath: name */
N_("Quiet lying breath")
/* Translators: quiet-lying-breath: another name */
N_("Lying rest")
/* Translators: quiet-lying-breath: to spare lower-back, in lower case */
N_("knees bent, feet flat")
/* Translators: quiet-lying-breath: setup */
N_("Lie on your back, legs long or knees bent, one hand resting on your tummy.")
/* Translators: quiet-lying-breath: cues 1 */
N_("Breathe in through your nose")
/* Translators: quiet-lying-breath: cues 2 */
N_("Feel the tummy rise")
/* Translators: quiet-lying-breath: cues 3 */
N_("Long, slow breath out")
/* Translators: quiet-lying-breath: cues 4 */
N_("Let the floor carry you")
/* Translators: quiet-lying-breath: fault */
N_("Breath feeling forced? Let it come slowly by itself.")
/* Translators: quiet-lying-breath: easier */
N_("Knees bent, feet flat, or calves on a chair.")
/* Translators: rack-march: name */
N_("Rack march")
/* Translators: rack-march: another name */
N_("Front-rack march")
/* Translators: rack-march: to spare lower-back, in lower case */
N_("lighter weight, lower knees")
/* Translators: rack-march: to spare wrists, in lower case */
N_("wrist straight, or hug it with both hands")
/* Translators: rack-march: to spare balance, in lower case */
N_("free hand on a wall")
/* Translators: rack-march: setup */
N_("Hold a kettlebell at one shoulder, elbow tucked in, wrist straight, feet hip-width apart.")
/* Translators: rack-march: cues 1 */
N_("Stand tall, ribs down")
/* Translators: rack-march: cues 2 */
N_("Elbow close to your side")
/* Translators: rack-march: cues 3 */
N_("Lift each knee slowly")
/* Translators: rack-march: cues 4 */
N_("Keep both shoulders level")
/* Translators: rack-march: fault */
N_("Leaning back under the weight? Squeeze your buttocks and draw your ribs down.")
/* Translators: rack-march: easier */
N_("Weight down, march tall on the spot.")
/* Translators: rack-march: harder */
N_("Slower knees, pausing with each one up.")
/* Translators: rear-foot-raised-split-squat: name */
N_("Rear-foot-raised split squat")
/* Translators: rear-foot-raised-split-squat: another name */
N_("Bulgarian split squat")
/* Translators: rear-foot-raised-split-squat: to spare knees, in lower case */
N_("half depth, shin upright")
/* Translators: rear-foot-raised-split-squat: to spare balance, in lower case */
N_("one hand on a wall")
/* Translators: rear-foot-raised-split-squat: setup */
N_("Stand a long step ahead of a steady chair, the top of one foot resting on it.")
/* Translators: rear-foot-raised-split-squat: cues 1 */
N_("Weight stays on the front foot")
/* Translators: rear-foot-raised-split-squat: cues 2 */
N_("Lower straight down")
/* Translators: rear-foot-raised-split-squat: cues 3 */
N_("Front knee follows your toes")
/* Translators: rear-foot-raised-split-squat: cues 4 */
N_("Lean forward a little, back long")
/* Translators: rear-foot-raised-split-squat: fault */
N_("Standing too close to the chair? Move the front foot further out.")
/* Translators: rear-foot-raised-split-squat: easier */
N_("Foot down, both feet on the floor, same movement.")
/* Translators: rear-foot-raised-split-squat: harder */
N_("Slower down, three counts, one count up.")
/* Translators: renegade-row: name */
N_("Renegade row")
/* Translators: renegade-row: another name */
N_("Plank row")
/* Translators: renegade-row: to spare shoulders, in lower case */
N_("knees down, one weight at a time")
/* Translators: renegade-row: to spare wrists, in lower case */
N_("grip firmly, wrists straight")
/* Translators: renegade-row: to spare lower-back, in lower case */
N_("knees down, tummy firm")
/* Translators: renegade-row: setup */
N_("Start in a high plank, hands on two steady dumbbells, feet wide.")
/* Translators: renegade-row: cues 1 */
N_("Press the floor away with one hand")
/* Translators: renegade-row: cues 2 */
N_("Row the other elbow to your ribs")
/* Translators: renegade-row: cues 3 */
N_("Hips level, facing the floor")
/* Translators: renegade-row: cues 4 */
N_("Set the weight down quietly")
/* Translators: renegade-row: fault */
N_("Hips rolling? Take your feet wider and use lighter weights.")
/* Translators: renegade-row: easier */
N_("Knees down, rowing one weight at a time.")
/* Translators: renegade-row: harder */
N_("Feet closer, with a pause at the top.")
/* Translators: reverse-crunch: name */
N_("Reverse crunch")
/* Translators: reverse-crunch: another name */
N_("Hip curl")
/* Translators: reverse-crunch: to spare lower-back, in lower case */
N_("smaller curl, knees close")
/* Translators: reverse-crunch: setup */
N_("Lie on your back, arms by your sides, knees bent above your hips.")
/* Translators: reverse-crunch: cues 1 */
N_("Curl your hips off the mat")
/* Translators: reverse-crunch: cues 2 */
N_("Knees come towards your chest")
/* Translators: reverse-crunch: cues 3 */
N_("Slow and small, no swinging")
/* Translators: reverse-crunch: cues 4 */
N_("Lower until your back is flat")
/* Translators: reverse-crunch: fault */
N_("Swinging your legs? Slow down and lift your hips less.")
/* Translators: reverse-crunch: easier */
N_("Feet down, just press your back flat.")
/* Translators: reverse-crunch: harder */
N_("Legs straight, lower both slowly.")
/* Translators: reverse-lunge: name */
N_("Reverse lunge")
/* Translators: reverse-lunge: another name */
N_("Backward lunge")
/* Translators: reverse-lunge: another name */
N_("Step-back lunge")
/* Translators: reverse-lunge: to spare knees, in lower case */
N_("shorter step, half the depth")
/* Translators: reverse-lunge: to spare balance, in lower case */
N_("fingertips on a wall or chair")
/* Translators: reverse-lunge: setup */
N_("Stand tall, feet hip-width, hands on your hips, with space behind you.")
/* Translators: reverse-lunge: cues 1 */
N_("Step back, sink straight down")
/* Translators: reverse-lunge: cues 2 */
N_("Weight on the front heel")
/* Translators: reverse-lunge: cues 3 */
N_("Front knee follows your toes")
/* Translators: reverse-lunge: cues 4 */
N_("Push the front foot to return")
/* Translators: reverse-lunge: fault */
N_("Stepping back onto one line? Keep your feet hip-width apart.")
/* Translators: reverse-lunge: easier */
N_("Feet fixed, lower and rise in a long stance.")
/* Translators: reverse-lunge: harder */
N_("Step forward, lower, then push back to standing.")
/* Translators: reverse-snow-angel: name */
N_("Reverse snow angel")
/* Translators: reverse-snow-angel: another name */
N_("Prone angel")
/* Translators: reverse-snow-angel: to spare shoulders, in lower case */
N_("sweep only to shoulder height")
/* Translators: reverse-snow-angel: to spare neck, in lower case */
N_("rest your forehead on the mat")
/* Translators: reverse-snow-angel: to spare lower-back, in lower case */
N_("keep chest and legs down")
/* Translators: reverse-snow-angel: setup */
N_("Lie face down, arms by your sides, palms down, forehead just off the mat.")
/* Translators: reverse-snow-angel: cues 1 */
N_("Float your arms off the floor")
/* Translators: reverse-snow-angel: cues 2 */
N_("Sweep them wide, up to your ears")
/* Translators: reverse-snow-angel: cues 3 */
N_("Sweep back slowly, still floating")
/* Translators: reverse-snow-angel: cues 4 */
N_("Neck long, eyes down")
/* Translators: reverse-snow-angel: fault */
N_("Hands touching down? Make the sweep shorter and keep them floating.")
/* Translators: reverse-snow-angel: easier */
N_("No sweep, just lift your arms in a Y.")
/* Translators: reverse-snow-angel: harder */
N_("Legs up, hovering while your arms sweep.")
/* Translators: rope-figure-eight: name */
N_("Rope figure-eight")
/* Translators: rope-figure-eight: another name */
N_("Rope swing without jumping")
/* Translators: rope-figure-eight: to spare shoulders, in lower case */
N_("smaller loops, hands low")
/* Translators: rope-figure-eight: to spare wrists, in lower case */
N_("swing from the arms, wrists still")
/* Translators: rope-figure-eight: setup */
N_("Stand with soft knees, both handles of a skipping rope together in your hands.")
/* Translators: rope-figure-eight: cues 1 */
N_("Swing it past your right, then left")
/* Translators: rope-figure-eight: cues 2 */
N_("Draw a lying figure eight")
/* Translators: rope-figure-eight: cues 3 */
N_("Dip your knees with each swing")
/* Translators: rope-figure-eight: cues 4 */
N_("Turn from your ribs, shoulders low")
/* Translators: rope-figure-eight: fault */
N_("Rope catching your feet? Swing slower and further out.")
/* Translators: rope-figure-eight: easier */
N_("No rope, drawing the same shape with empty hands.")
/* Translators: rope-figure-eight: harder */
N_("Step with it, from side to side.")
/* Translators: rope-skipping: name */
N_("Rope skipping")
/* Translators: rope-skipping: another name */
N_("Jump rope")
/* Translators: rope-skipping: another name */
N_("Skipping")
/* Translators: rope-skipping: setup */
N_("Stand tall, rope behind your heels, elbows close, hands at hip height and slightly forward.")
/* Translators: rope-skipping: cues 1 */
N_("Small hops, both feet together")
/* Translators: rope-skipping: cues 2 */
N_("Turn the rope with your wrists")
/* Translators: rope-skipping: cues 3 */
N_("Land lightly on the balls of your feet")
/* Translators: rope-skipping: cues 4 */
N_("Look straight ahead")
/* Translators: rope-skipping: fault */
N_("Arms drifting wide, rope too short? Bring your elbows to your ribs.")
/* Translators: rope-skipping: easier */
N_("No rope, same hops, hands turning.")
/* Translators: rope-skipping: harder */
N_("Knees high, change feet with every turn.")
/* Translators: rower-stroke: name */
N_("Rower stroke")
/* Translators: rower-stroke: another name */
N_("Rowing machine")
/* Translators: rower-stroke: to spare lower-back, in lower case */
N_("short strokes, sitting tall")
/* Translators: rower-stroke: to spare knees, in lower case */
N_("slide forward less")
/* Translators: rower-stroke: to spare grip, in lower case */
N_("hook the fingers, loose thumbs")
/* Translators: rower-stroke: setup */
N_("Strap your feet in, slide forward and sit tall, arms long, hands light on the handle.")
/* Translators: rower-stroke: cues 1 */
N_("Push with your legs first")
/* Translators: rower-stroke: cues 2 */
N_("Lean back slightly, then pull")
/* Translators: rower-stroke: cues 3 */
N_("Coming back, arms go first")
/* Translators: rower-stroke: cues 4 */
N_("Come back slower than you went")
/* Translators: rower-stroke: fault */
N_("Pulling too early? Wait until your legs are nearly straight.")
/* Translators: rower-stroke: easier */
N_("Legs only, with the arms staying long.")
/* Translators: rower-stroke: harder */
N_("Push harder, keeping the same unhurried rhythm.")
/* Translators: russian-twist: name */
N_("Russian twist")
/* Translators: russian-twist: another name */
N_("Lean-back twist")
/* Translators: russian-twist: to spare lower-back, in lower case */
N_("sit tall, heels down, smaller turns")
/* Translators: russian-twist: setup */
N_("Sit with knees bent and heels down, lean back slightly, hands together at your chest.")
/* Translators: russian-twist: cues 1 */
N_("Chest tall, back long")
/* Translators: russian-twist: cues 2 */
N_("Turn your shoulders to one side")
/* Translators: russian-twist: cues 3 */
N_("Knees stay still")
/* Translators: russian-twist: cues 4 */
N_("Breathe out with each turn")
/* Translators: russian-twist: fault */
N_("Back rounding? Sit up taller and lean back less.")
/* Translators: russian-twist: easier */
N_("Sit taller, make the turns smaller.")
/* Translators: russian-twist: harder */
N_("Feet up, off the floor, knees still.")
/* Translators: scapular-push-up: name */
N_("Scapular push-up")
/* Translators: scapular-push-up: another name */
N_("Straight-arm push-up")
/* Translators: scapular-push-up: another name */
N_("Shoulder-blade push-up")
/* Translators: scapular-push-up: to spare wrists, in lower case */
N_("on forearms, with the same small movement")
/* Translators: scapular-push-up: to spare shoulders, in lower case */
N_("standing, hands on a wall")
/* Translators: scapular-push-up: to spare lower-back, in lower case */
N_("knees down")
/* Translators: scapular-push-up: setup */
N_("Hold the top of a push-up: hands under shoulders, arms straight, body in one line.")
/* Translators: scapular-push-up: cues 1 */
N_("Arms stay straight")
/* Translators: scapular-push-up: cues 2 */
N_("Let the chest sink slightly")
/* Translators: scapular-push-up: cues 3 */
N_("Then push the floor away")
/* Translators: scapular-push-up: cues 4 */
N_("Head and hips stay level")
/* Translators: scapular-push-up: fault */
N_("Elbows bending? Make it smaller, from the shoulder blades only.")
/* Translators: scapular-push-up: easier */
N_("Knees down, with the same small movement.")
/* Translators: scapular-push-up: harder */
N_("Full push-up, bending the elbows, body still straight.")
/* Translators: seated-back-wave: name */
N_("Seated back wave")
/* Translators: seated-back-wave: another name */
N_("Round and lift on a chair")
/* Translators: seated-back-wave: to spare lower-back, in lower case */
N_("small waves, sitting well back")
/* Translators: seated-back-wave: to spare neck, in lower case */
N_("keep your eyes level")
/* Translators: seated-back-wave: setup */
N_("Sit towards the front of the chair, feet flat, hands resting on your knees.")
/* Translators: seated-back-wave: cues 1 */
N_("Breathe out and round your back")
/* Translators: seated-back-wave: cues 2 */
N_("Breathe in and lift your chest")
/* Translators: seated-back-wave: cues 3 */
N_("Start each wave from your hips")
/* Translators: seated-back-wave: cues 4 */
N_("Your head follows last")
/* Translators: seated-back-wave: fault */
N_("Only your neck moving? Tip your hips first.")
/* Translators: seated-back-wave: easier */
N_("Smaller waves, just as far as feels good.")
/* Translators: seated-back-wave: harder */
N_("Add arms, reaching ahead as you round, opening as you lift.")
/* Translators: seated-band-chest-press: name */
N_("Seated band chest press")
/* Translators: seated-band-chest-press: another name */
N_("Band press on a chair")
/* Translators: seated-band-chest-press: to spare shoulders, in lower case */
N_("press low, towards your knees")
/* Translators: seated-band-chest-press: to spare wrists, in lower case */
N_("thumbs up, wrists straight")
/* Translators: seated-band-chest-press: setup */
N_("Sit tall, band around your upper back and under your arms, one end in each hand.")
/* Translators: seated-band-chest-press: cues 1 */
N_("Start with hands beside your chest")
/* Translators: seated-band-chest-press: cues 2 */
N_("Press forward until arms are nearly straight")
/* Translators: seated-band-chest-press: cues 3 */
N_("Come back slowly")
/* Translators: seated-band-chest-press: cues 4 */
N_("Wrists straight, shoulders low")
/* Translators: seated-band-chest-press: fault */
N_("Shoulders creeping up? Press a little lower.")
/* Translators: seated-band-chest-press: easier */
N_("Looser band, with slow, short presses.")
/* Translators: seated-band-chest-press: harder */
N_("Shorter grip, so the band pulls harder.")
/* Translators: seated-band-row: name */
N_("Seated band row")
/* Translators: seated-band-row: another name */
N_("Band row on a chair")
/* Translators: seated-band-row: to spare grip, in lower case */
N_("wrap the band around your palms")
/* Translators: seated-band-row: to spare lower-back, in lower case */
N_("sit against the backrest")
/* Translators: seated-band-row: setup */
N_("Sit tall, heels down ahead, band around the middle of both shoes, one end in each hand.")
/* Translators: seated-band-row: cues 1 */
N_("Pull your elbows back past your ribs")
/* Translators: seated-band-row: cues 2 */
N_("Squeeze your shoulder blades together")
/* Translators: seated-band-row: cues 3 */
N_("Straighten your arms slowly")
/* Translators: seated-band-row: cues 4 */
N_("Back still and tall")
/* Translators: seated-band-row: fault */
N_("Rocking back with each pull? Hold the band more loosely.")
/* Translators: seated-band-row: easier */
N_("No band, just draw your elbows back and squeeze.")
/* Translators: seated-band-row: harder */
N_("Shorter grip, with a pause at each squeeze.")
/* Translators: seated-biceps-curl: name */
N_("Seated biceps curl")
/* Translators: seated-biceps-curl: another name */
N_("Dumbbell curl on a chair")
/* Translators: seated-biceps-curl: to spare wrists, in lower case */
N_("turn your palms in, thumbs up")
/* Translators: seated-biceps-curl: setup */
N_("Sit tall, feet flat, a dumbbell in each hand, arms hanging beside the chair, palms forward.")
/* Translators: seated-biceps-curl: cues 1 */
N_("Elbows stay by your ribs")
/* Translators: seated-biceps-curl: cues 2 */
N_("Curl up, wrists straight")
/* Translators: seated-biceps-curl: cues 3 */
N_("Lower slowly to long arms")
/* Translators: seated-biceps-curl: cues 4 */
N_("Sit still, no swinging")
/* Translators: seated-biceps-curl: fault */
N_("Leaning back to lift? Sit against the backrest and use less weight.")
/* Translators: seated-biceps-curl: easier */
N_("One arm, the other resting on your thigh.")
/* Translators: seated-biceps-curl: harder */
N_("Slower down, counting three on the way.")
/* Translators: seated-blade-squeeze: name */
N_("Seated shoulder-blade squeeze")
/* Translators: seated-blade-squeeze: another name */
N_("Elbows back on a chair")
/* Translators: seated-blade-squeeze: to spare shoulders, in lower case */
N_("smaller squeeze, elbows low")
/* Translators: seated-blade-squeeze: setup */
N_("Sit tall away from the backrest, elbows bent at your sides, palms facing each other.")
/* Translators: seated-blade-squeeze: cues 1 */
N_("Draw your elbows straight back")
/* Translators: seated-blade-squeeze: cues 2 */
N_("Squeeze your shoulder blades together")
/* Translators: seated-blade-squeeze: cues 3 */
N_("Hold for a moment, then let go")
/* Translators: seated-blade-squeeze: cues 4 */
N_("Shoulders stay away from your ears")
/* Translators: seated-blade-squeeze: fault */
N_("Ribs pushing forward? Breathe out and draw back less.")
/* Translators: seated-blade-squeeze: easier */
N_("Smaller squeeze, elbows touching your sides.")
/* Translators: seated-blade-squeeze: harder */
N_("Add a band, held around your feet, and pull.")
/* Translators: seated-bow: name */
N_("Seated bow")
/* Translators: seated-bow: another name */
N_("Hip hinge on a chair")
/* Translators: seated-bow: to spare lower-back, in lower case */
N_("hands on thighs, small bow")
/* Translators: seated-bow: to spare hips, in lower case */
N_("feet wider, bow less")
/* Translators: seated-bow: to spare pressure, in lower case */
N_("chest stays above your knees")
/* Translators: seated-bow: setup */
N_("Sit near the front of the chair, feet flat and apart, arms crossed on your chest.")
/* Translators: seated-bow: cues 1 */
N_("Tip forward from your hips")
/* Translators: seated-bow: cues 2 */
N_("Back long, chest open")
/* Translators: seated-bow: cues 3 */
N_("Look at the floor ahead of you")
/* Translators: seated-bow: cues 4 */
N_("Press your feet down to come up")
/* Translators: seated-bow: fault */
N_("Back rounding? Bow less and lead with your chest.")
/* Translators: seated-bow: easier */
N_("Hands on thighs, helping you come back up.")
/* Translators: seated-bow: harder */
N_("Stand up, soften your knees and bow from there.")
/* Translators: seated-chest-stretch: name */
N_("Seated chest stretch")
/* Translators: seated-chest-stretch: another name */
N_("Chest opener on a chair")
/* Translators: seated-chest-stretch: to spare shoulders, in lower case */
N_("hands on hips, elbows back")
/* Translators: seated-chest-stretch: setup */
N_("Sit a little forward and reach back with both hands to hold the backrest.")
/* Translators: seated-chest-stretch: cues 1 */
N_("Lift your breastbone")
/* Translators: seated-chest-stretch: cues 2 */
N_("Draw your shoulders back and down")
/* Translators: seated-chest-stretch: cues 3 */
N_("Keep your chin level")
/* Translators: seated-chest-stretch: cues 4 */
N_("Breathe into your chest")
/* Translators: seated-chest-stretch: fault */
N_("Lower back arching? Lift less and breathe out.")
/* Translators: seated-chest-stretch: easier */
N_("Hands on hips, drawing your elbows gently back.")
/* Translators: seated-chest-stretch: harder */
N_("Slide forward, so your arms reach further behind you.")
/* Translators: seated-drape: name */
N_("Seated drape")
/* Translators: seated-drape: another name */
N_("Forward fold on a chair")
/* Translators: seated-drape: to spare pressure, in lower case */
N_("forearms on thighs, head up")
/* Translators: seated-drape: to spare lower-back, in lower case */
N_("forearms on thighs")
/* Translators: seated-drape: setup */
N_("Sit well back in the chair, feet wide and flat, hands on your knees.")
/* Translators: seated-drape: cues 1 */
N_("Walk your hands down your shins")
/* Translators: seated-drape: cues 2 */
N_("Let your head and neck hang")
/* Translators: seated-drape: cues 3 */
N_("Breathe slowly into your back")
/* Translators: seated-drape: cues 4 */
N_("Roll up slowly, head last")
/* Translators: seated-drape: fault */
N_("Coming up in a rush? Push on your thighs and rise slowly.")
/* Translators: seated-drape: easier */
N_("Forearms down, resting on your thighs.")
/* Translators: seated-drape: harder */
N_("Hands to floor, letting your elbows hang heavy.")
/* Translators: seated-figure-four-stretch: name */
N_("Seated figure-four stretch")
/* Translators: seated-figure-four-stretch: another name */
N_("Buttock stretch on a chair")
/* Translators: seated-figure-four-stretch: to spare hips, in lower case */
N_("ankles crossed, knees apart, sit tall")
/* Translators: seated-figure-four-stretch: to spare knees, in lower case */
N_("ankles crossed instead")
/* Translators: seated-figure-four-stretch: setup */
N_("Sit tall near the front of the chair, one ankle resting just above the other knee.")
/* Translators: seated-figure-four-stretch: cues 1 */
N_("Let the lifted knee sink")
/* Translators: seated-figure-four-stretch: cues 2 */
N_("Tip forward, back long")
/* Translators: seated-figure-four-stretch: cues 3 */
N_("Feel it in your buttock")
/* Translators: seated-figure-four-stretch: cues 4 */
N_("Breathe out slowly")
/* Translators: seated-figure-four-stretch: fault */
N_("Feeling it in the knee? Sit up, or cross your ankles.")
/* Translators: seated-figure-four-stretch: easier */
N_("Cross your ankles, knees apart, and lean forward.")
/* Translators: seated-figure-four-stretch: harder */
N_("Lean further, forearms resting on your shin.")
/* Translators: seated-forward-fold: name */
N_("Seated forward fold")
/* Translators: seated-forward-fold: another name */
N_("Seated toe reach")
/* Translators: seated-forward-fold: to spare lower-back, in lower case */
N_("sit on a cushion with knees bent")
/* Translators: seated-forward-fold: setup */
N_("Sit with both legs straight in front of you, and grow tall before you fold.")
/* Translators: seated-forward-fold: cues 1 */
N_("Fold from the hips")
/* Translators: seated-forward-fold: cues 2 */
N_("Hands rest where they land")
/* Translators: seated-forward-fold: cues 3 */
N_("Shoulders away from the ears")
/* Translators: seated-forward-fold: cues 4 */
N_("Sink a little with each breath out")
/* Translators: seated-forward-fold: fault */
N_("Tugging on your feet? Rest the hands and soften.")
/* Translators: seated-forward-fold: easier */
N_("Knees bent, hands resting on the shins.")
/* Translators: seated-forward-fold: harder */
N_("Toes drawn back, chest reaching towards the shins.")
/* Translators: seated-hamstring-stretch: name */
N_("Seated hamstring stretch")
/* Translators: seated-hamstring-stretch: another name */
N_("Back-of-thigh stretch on a chair")
/* Translators: seated-hamstring-stretch: to spare lower-back, in lower case */
N_("stay upright, pull the toes back")
/* Translators: seated-hamstring-stretch: setup */
N_("Sit near the front of the chair, one heel out ahead, leg long, other foot flat.")
/* Translators: seated-hamstring-stretch: cues 1 */
N_("Hands on the bent leg")
/* Translators: seated-hamstring-stretch: cues 2 */
N_("Tip forward from your hips")
/* Translators: seated-hamstring-stretch: cues 3 */
N_("Stop at a gentle pull")
/* Translators: seated-hamstring-stretch: cues 4 */
N_("Breathe slowly and soften")
/* Translators: seated-hamstring-stretch: fault */
N_("Back rounding? Come up a little and lift your chest.")
/* Translators: seated-hamstring-stretch: easier */
N_("Bend slightly, at the knee of the long leg.")
/* Translators: seated-hamstring-stretch: harder */
N_("Toes back, drawing them gently towards your shin.")
/* Translators: seated-heel-and-toe-rock: name */
N_("Seated heel and toe rock")
/* Translators: seated-heel-and-toe-rock: another name */
N_("Heel and toe raise on a chair")
/* Translators: seated-heel-and-toe-rock: to spare ankles, in lower case */
N_("one foot at a time, smaller rocks")
/* Translators: seated-heel-and-toe-rock: setup */
N_("Sit with feet flat and hip-width apart, knees above your ankles, hands on your thighs.")
/* Translators: seated-heel-and-toe-rock: cues 1 */
N_("Lift both heels high")
/* Translators: seated-heel-and-toe-rock: cues 2 */
N_("Roll down, then lift your toes")
/* Translators: seated-heel-and-toe-rock: cues 3 */
N_("Move slowly through the whole foot")
/* Translators: seated-heel-and-toe-rock: cues 4 */
N_("Press the big toes down")
/* Translators: seated-heel-and-toe-rock: fault */
N_("Knees drifting apart? Point them ahead and rock more slowly.")
/* Translators: seated-heel-and-toe-rock: easier */
N_("One foot only, and change over halfway.")
/* Translators: seated-heel-and-toe-rock: harder */
N_("Stand up, hold the chair and rise onto your toes.")
/* Translators: seated-jack: name */
N_("Seated jack")
/* Translators: seated-jack: another name */
N_("Seated jumping jack")
/* Translators: seated-jack: to spare shoulders, in lower case */
N_("arms only to shoulder height")
/* Translators: seated-jack: to spare hips, in lower case */
N_("one foot at a time")
/* Translators: seated-jack: setup */
N_("Sit tall near the front of the chair, feet together, arms by your sides.")
/* Translators: seated-jack: cues 1 */
N_("Both feet out wide, heels first")
/* Translators: seated-jack: cues 2 */
N_("Sweep both arms out and up")
/* Translators: seated-jack: cues 3 */
N_("Draw everything back to the middle")
/* Translators: seated-jack: cues 4 */
N_("Stay tall, away from the backrest")
/* Translators: seated-jack: fault */
N_("Sinking back as your feet go out? Slow down and sit tall again.")
/* Translators: seated-jack: easier */
N_("One foot out, then the other, hands on the seat.")
/* Translators: seated-jack: harder */
N_("Quicker now, reaching high with every opening.")
/* Translators: seated-knee-extension: name */
N_("Seated knee extension")
/* Translators: seated-knee-extension: another name */
N_("Leg straightening on a chair")
/* Translators: seated-knee-extension: to spare knees, in lower case */
N_("straighten only halfway")
/* Translators: seated-knee-extension: setup */
N_("Sit right back in the chair, feet flat, hands holding the sides of the seat.")
/* Translators: seated-knee-extension: cues 1 */
N_("Straighten one leg, toes towards you")
/* Translators: seated-knee-extension: cues 2 */
N_("Tighten the thigh and hold briefly")
/* Translators: seated-knee-extension: cues 3 */
N_("Lower slowly, then change legs")
/* Translators: seated-knee-extension: cues 4 */
N_("The thigh stays on the seat")
/* Translators: seated-knee-extension: fault */
N_("Leaning back to lift? Sit tall and raise the foot less.")
/* Translators: seated-knee-extension: easier */
N_("Halfway up, keeping the knee gently bent.")
/* Translators: seated-knee-extension: harder */
N_("Hold longer, three slow counts at the top.")
/* Translators: seated-lean-back: name */
N_("Seated lean back")
/* Translators: seated-lean-back: another name */
N_("Lean back on a chair")
/* Translators: seated-lean-back: to spare lower-back, in lower case */
N_("lean less, hands on the seat")
/* Translators: seated-lean-back: to spare pelvic-floor, in lower case */
N_("breathe out before you come up")
/* Translators: seated-lean-back: setup */
N_("Sit on the front half of the seat, feet flat, arms crossed, back long.")
/* Translators: seated-lean-back: cues 1 */
N_("Lean back slowly, back still long")
/* Translators: seated-lean-back: cues 2 */
N_("Stop before you touch the backrest")
/* Translators: seated-lean-back: cues 3 */
N_("Breathe out and come up tall")
/* Translators: seated-lean-back: cues 4 */
N_("Both feet stay on the floor")
/* Translators: seated-lean-back: fault */
N_("Back rounding? Lean only as far as it stays long.")
/* Translators: seated-lean-back: easier */
N_("Hold the seat, and lean back just a little.")
/* Translators: seated-lean-back: harder */
N_("Pause there, for three easy breaths.")
/* Translators: seated-march: name */
N_("Seated march")
/* Translators: seated-march: another name */
N_("Chair march")
/* Translators: seated-march: to spare hips, in lower case */
N_("heels only, toes stay down")
/* Translators: seated-march: setup */
N_("Sit tall near the front of the chair, feet flat, hands resting lightly on the seat.")
/* Translators: seated-march: cues 1 */
N_("Lift one knee, then the other")
/* Translators: seated-march: cues 2 */
N_("Put each foot down quietly")
/* Translators: seated-march: cues 3 */
N_("Stay tall, away from the backrest")
/* Translators: seated-march: cues 4 */
N_("Breathe in an easy rhythm")
/* Translators: seated-march: fault */
N_("Back rounding as the knee rises? Lift it a little lower.")
/* Translators: seated-march: easier */
N_("Heels only, with the toes staying on the floor.")
/* Translators: seated-march: harder */
N_("Add punches, one fist forward with every knee.")
/* Translators: seated-march-with-punches: name */
N_("Seated march with punches")
/* Translators: seated-march-with-punches: another name */
N_("March and punch on a chair")
/* Translators: seated-march-with-punches: to spare shoulders, in lower case */
N_("punch low, at waist height")
/* Translators: seated-march-with-punches: to spare hips, in lower case */
N_("low knees, or heels only")
/* Translators: seated-march-with-punches: setup */
N_("Sit tall near the front of the chair, feet flat, loose fists in front of your chest.")
/* Translators: seated-march-with-punches: cues 1 */
N_("Left knee up, right fist forward")
/* Translators: seated-march-with-punches: cues 2 */
N_("Change sides in an even rhythm")
/* Translators: seated-march-with-punches: cues 3 */
N_("Stop just short of straight arms")
/* Translators: seated-march-with-punches: cues 4 */
N_("Shoulders stay low")
/* Translators: seated-march-with-punches: fault */
N_("Sinking into the backrest? Slow down and sit tall again.")
/* Translators: seated-march-with-punches: easier */
N_("March only, hands resting on the seat.")
/* Translators: seated-march-with-punches: harder */
N_("Quicker now, fists at shoulder height, feet still quiet.")
/* Translators: seated-neck-stretch: name */
N_("Seated neck stretch")
/* Translators: seated-neck-stretch: another name */
N_("Head tilt on a chair")
/* Translators: seated-neck-stretch: to spare neck, in lower case */
N_("a smaller tilt, head never forced")
/* Translators: seated-neck-stretch: setup */
N_("Sit tall, one hand holding the side of the seat, the other resting on your thigh.")
/* Translators: seated-neck-stretch: cues 1 */
N_("Ear sinks away from the holding hand")
/* Translators: seated-neck-stretch: cues 2 */
N_("That shoulder stays low")
/* Translators: seated-neck-stretch: cues 3 */
N_("Face straight ahead")
/* Translators: seated-neck-stretch: cues 4 */
N_("Slow breath out")
/* Translators: seated-neck-stretch: fault */
N_("Shoulder creeping up? Hold the seat a little lower and breathe out.")
/* Translators: seated-neck-stretch: easier */
N_("Smaller tilt, just until you feel it begin.")
/* Translators: seated-neck-stretch: harder */
N_("Turn slightly, looking down towards your thigh.")
/* Translators: seated-shoulder-press: name */
N_("Seated shoulder press")
/* Translators: seated-shoulder-press: another name */
N_("Dumbbell press on a chair")
/* Translators: seated-shoulder-press: to spare shoulders, in lower case */
N_("lighter weights, stop at eye level")
/* Translators: seated-shoulder-press: to spare lower-back, in lower case */
N_("back against the backrest")
/* Translators: seated-shoulder-press: to spare pressure, in lower case */
N_("one arm at a time, breathing out")
/* Translators: seated-shoulder-press: setup */
N_("Sit tall, feet flat, a dumbbell in each hand at shoulder height, palms facing in.")
/* Translators: seated-shoulder-press: cues 1 */
N_("Press up as you breathe out")
/* Translators: seated-shoulder-press: cues 2 */
N_("Hands finish just ahead of your ears")
/* Translators: seated-shoulder-press: cues 3 */
N_("Lower slowly to your shoulders")
/* Translators: seated-shoulder-press: cues 4 */
N_("Ribs stay down")
/* Translators: seated-shoulder-press: fault */
N_("Back arching? Choose lighter weights, or one arm at a time.")
/* Translators: seated-shoulder-press: easier */
N_("Empty hands, reaching up as high as feels good.")
/* Translators: seated-shoulder-press: harder */
N_("Stand up, feet hip-width, and press from there.")
/* Translators: seated-shoulder-rolls: name */
N_("Seated shoulder rolls")
/* Translators: seated-shoulder-rolls: another name */
N_("Shoulder circles on a chair")
/* Translators: seated-shoulder-rolls: setup */
N_("Sit tall away from the backrest, feet flat, arms hanging loosely by your sides.")
/* Translators: seated-shoulder-rolls: cues 1 */
N_("Up, back and down")
/* Translators: seated-shoulder-rolls: cues 2 */
N_("Big, slow circles")
/* Translators: seated-shoulder-rolls: cues 3 */
N_("Arms hang loose")
/* Translators: seated-shoulder-rolls: cues 4 */
N_("Halfway, change direction")
/* Translators: seated-shoulder-rolls: fault */
N_("Chin poking forward? Lift your head and slow down.")
/* Translators: seated-shoulder-rolls: easier */
N_("Smaller circles, one shoulder at a time.")
/* Translators: seated-shoulder-rolls: harder */
N_("Elbows too, fingertips resting on your shoulders.")
/* Translators: seated-side-bend: name */
N_("Seated side bend")
/* Translators: seated-side-bend: another name */
N_("Side reach on a chair")
/* Translators: seated-side-bend: to spare lower-back, in lower case */
N_("bend less, hand on the seat")
/* Translators: seated-side-bend: to spare shoulders, in lower case */
N_("top hand on your hip")
/* Translators: seated-side-bend: setup */
N_("Sit tall with your feet wide and flat, arms hanging loosely on either side.")
/* Translators: seated-side-bend: cues 1 */
N_("Reach one hand towards the floor")
/* Translators: seated-side-bend: cues 2 */
N_("Sweep the other arm overhead")
/* Translators: seated-side-bend: cues 3 */
N_("Both hips stay heavy on the seat")
/* Translators: seated-side-bend: cues 4 */
N_("Breathe out as you bend")
/* Translators: seated-side-bend: fault */
N_("Chest dropping forward? Bend less and keep it facing ahead.")
/* Translators: seated-side-bend: easier */
N_("Hand on hip, instead of reaching it overhead.")
/* Translators: seated-side-bend: harder */
N_("Pause there, for one slow breath on each side.")
/* Translators: seated-step-out: name */
N_("Seated step out")
/* Translators: seated-step-out: another name */
N_("Seated side tap")
/* Translators: seated-step-out: to spare hips, in lower case */
N_("slide the foot a short way out")
/* Translators: seated-step-out: setup */
N_("Sit tall near the front of the chair, feet together, hands holding the sides of the seat.")
/* Translators: seated-step-out: cues 1 */
N_("Step one foot out to the side")
/* Translators: seated-step-out: cues 2 */
N_("Knee and toes travel together")
/* Translators: seated-step-out: cues 3 */
N_("Bring it back, then change legs")
/* Translators: seated-step-out: cues 4 */
N_("Lift the foot, put it down lightly")
/* Translators: seated-step-out: fault */
N_("Body leaning with the leg? Take a smaller step.")
/* Translators: seated-step-out: easier */
N_("Small steps, sliding the foot along the floor.")
/* Translators: seated-step-out: harder */
N_("Stand up, hold the chair and lift one leg sideways.")
/* Translators: seated-twist: name */
N_("Seated twist")
/* Translators: seated-twist: another name */
N_("Turn on a chair")
/* Translators: seated-twist: to spare lower-back, in lower case */
N_("turn only a little, hands on thighs")
/* Translators: seated-twist: setup */
N_("Sit tall near the front of the chair, feet wide and flat, arms crossed on your chest.")
/* Translators: seated-twist: cues 1 */
N_("Turn your ribs to one side")
/* Translators: seated-twist: cues 2 */
N_("Come back through the middle, change sides")
/* Translators: seated-twist: cues 3 */
N_("Knees keep pointing forward")
/* Translators: seated-twist: cues 4 */
N_("Grow taller as you turn")
/* Translators: seated-twist: fault */
N_("Knees swinging along? Press both feet down and turn less.")
/* Translators: seated-twist: easier */
N_("Hands on thighs, turning only as far as feels easy.")
/* Translators: seated-twist: harder */
N_("Arms out, palms together, turning slowly.")
/* Translators: shadow-boxing: name */
N_("Shadow boxing")
/* Translators: shadow-boxing: another name */
N_("Air punches")
/* Translators: shadow-boxing: to spare shoulders, in lower case */
N_("punch lower, stop short of straight")
/* Translators: shadow-boxing: setup */
N_("Stand with one foot forward, knees soft, fists by your cheeks and elbows close.")
/* Translators: shadow-boxing: cues 1 */
N_("Turn your hips into each punch")
/* Translators: shadow-boxing: cues 2 */
N_("Other fist stays by your cheek")
/* Translators: shadow-boxing: cues 3 */
N_("Bring the hand straight back")
/* Translators: shadow-boxing: cues 4 */
N_("Swap your front foot halfway")
/* Translators: shadow-boxing: fault */
N_("Snapping the elbow straight? Stop just short and draw the fist back.")
/* Translators: shadow-boxing: easier */
N_("Feet still, slower and softer punches.")
/* Translators: shadow-boxing: harder */
N_("Sink lower, punch in quick threes and fours.")
/* Translators: shoulder-press: name */
N_("Shoulder press")
/* Translators: shoulder-press: another name */
N_("Overhead press")
/* Translators: shoulder-press: another name */
N_("Dumbbell press")
/* Translators: shoulder-press: to spare shoulders, in lower case */
N_("palms facing, stop at forehead height")
/* Translators: shoulder-press: to spare lower-back, in lower case */
N_("soften your knees, tummy firm")
/* Translators: shoulder-press: to spare pressure, in lower case */
N_("lighter weights, keep breathing")
/* Translators: shoulder-press: setup */
N_("Stand tall, a dumbbell at each shoulder, elbows slightly in front of you.")
/* Translators: shoulder-press: cues 1 */
N_("Press up, finishing beside your ears")
/* Translators: shoulder-press: cues 2 */
N_("Tummy and buttocks firm")
/* Translators: shoulder-press: cues 3 */
N_("Wrists straight above your elbows")
/* Translators: shoulder-press: cues 4 */
N_("Lower slowly to your shoulders")
/* Translators: shoulder-press: fault */
N_("Leaning back? Soften your knees and use lighter weights.")
/* Translators: shoulder-press: easier */
N_("Lighter weights, palms facing each other.")
/* Translators: shoulder-press: harder */
N_("Leg drive, with slightly heavier weights.")
/* Translators: shoulder-rolls: name */
N_("Shoulder rolls")
/* Translators: shoulder-rolls: another name */
N_("Shoulder circles")
/* Translators: shoulder-rolls: setup */
N_("Stand tall, feet hip-width apart, arms hanging loosely by your sides.")
/* Translators: shoulder-rolls: cues 1 */
N_("Up, back and down")
/* Translators: shoulder-rolls: cues 2 */
N_("Big, slow circles")
/* Translators: shoulder-rolls: cues 3 */
N_("Arms hang loose")
/* Translators: shoulder-rolls: cues 4 */
N_("Halfway, change direction")
/* Translators: shoulder-rolls: fault */
N_("Chin poking forward? Lift the head and slow down.")
/* Translators: shoulder-rolls: easier */
N_("Smaller circles, one shoulder at a time.")
/* Translators: shoulder-rolls: harder */
N_("Arm circles, arms long and out to the sides.")
/* Translators: shoulder-tap: name */
N_("Shoulder tap")
/* Translators: shoulder-tap: another name */
N_("Plank shoulder tap")
/* Translators: shoulder-tap: to spare wrists, in lower case */
N_("on your forearms, reach each arm forward")
/* Translators: shoulder-tap: to spare lower-back, in lower case */
N_("knees down, feet apart")
/* Translators: shoulder-tap: to spare shoulders, in lower case */
N_("knees down, slower taps")
/* Translators: shoulder-tap: setup */
N_("Start on hands and toes, hands under shoulders, feet a little wider than your hips.")
/* Translators: shoulder-tap: cues 1 */
N_("Hips still, as if carrying a tray")
/* Translators: shoulder-tap: cues 2 */
N_("Lift one hand, tap opposite shoulder")
/* Translators: shoulder-tap: cues 3 */
N_("Push through the other hand")
/* Translators: shoulder-tap: cues 4 */
N_("Take your time")
/* Translators: shoulder-tap: fault */
N_("Hips rocking? Set your feet wider and slow down.")
/* Translators: shoulder-tap: easier */
N_("Both hands down, hold the long line.")
/* Translators: shoulder-tap: harder */
N_("Push-up first, then tap both shoulders.")
/* Translators: side-bend-reach: name */
N_("Side bend reach")
/* Translators: side-bend-reach: another name */
N_("Standing side reach")
/* Translators: side-bend-reach: to spare lower-back, in lower case */
N_("smaller bend, other hand on the thigh")
/* Translators: side-bend-reach: to spare shoulders, in lower case */
N_("hand on hip instead of overhead")
/* Translators: side-bend-reach: setup */
N_("Stand with feet wider than hips, knees soft, arms by your sides.")
/* Translators: side-bend-reach: cues 1 */
N_("One arm up and over")
/* Translators: side-bend-reach: cues 2 */
N_("Grow long before you bend")
/* Translators: side-bend-reach: cues 3 */
N_("Both feet stay heavy")
/* Translators: side-bend-reach: cues 4 */
N_("Back to the middle, then change")
/* Translators: side-bend-reach: fault */
N_("Chest tipping forward? Bend straight to the side.")
/* Translators: side-bend-reach: easier */
N_("Arms stay low, one hand sliding down the thigh.")
/* Translators: side-bend-reach: harder */
N_("Both arms overhead, hands together as you bend.")
/* Translators: side-lunge: name */
N_("Side lunge")
/* Translators: side-lunge: another name */
N_("Lateral lunge")
/* Translators: side-lunge: to spare knees, in lower case */
N_("shorter step, half the depth")
/* Translators: side-lunge: to spare hips, in lower case */
N_("shorter step")
/* Translators: side-lunge: setup */
N_("Stand tall, feet together, hands in front of your chest, with space on both sides.")
/* Translators: side-lunge: cues 1 */
N_("Wide step, sit your hips back")
/* Translators: side-lunge: cues 2 */
N_("Other leg straight, foot flat")
/* Translators: side-lunge: cues 3 */
N_("Knee in line with toes")
/* Translators: side-lunge: cues 4 */
N_("Push back to the middle")
/* Translators: side-lunge: fault */
N_("Folding forward? Lift your chest and sit back into the heel.")
/* Translators: side-lunge: easier */
N_("Feet wide, squat straight down and up.")
/* Translators: side-lunge: harder */
N_("Knee up, balance a moment as you return.")
/* Translators: side-lying-inner-thigh-lift: name */
N_("Side-lying inner-thigh lift")
/* Translators: side-lying-inner-thigh-lift: another name */
N_("Lower-leg lift")
/* Translators: side-lying-inner-thigh-lift: another name */
N_("Lying hip adduction")
/* Translators: side-lying-inner-thigh-lift: to spare neck, in lower case */
N_("head resting down on the arm")
/* Translators: side-lying-inner-thigh-lift: setup */
N_("Lie on your side, lower leg straight, top foot planted in front of your lower knee.")
/* Translators: side-lying-inner-thigh-lift: cues 1 */
N_("Lift the lower leg, toes forward")
/* Translators: side-lying-inner-thigh-lift: cues 2 */
N_("One hip above the other, waist still")
/* Translators: side-lying-inner-thigh-lift: cues 3 */
N_("Pause, then lower slowly")
/* Translators: side-lying-inner-thigh-lift: fault */
N_("Rolling backwards? Bring the top hip forward over the lower one.")
/* Translators: side-lying-inner-thigh-lift: easier */
N_("Knee bent, lift the lower leg a little way.")
/* Translators: side-lying-inner-thigh-lift: harder */
N_("Longer pause, hold the top for three counts.")
/* Translators: side-lying-leg-raise: name */
N_("Side-lying leg raise")
/* Translators: side-lying-leg-raise: another name */
N_("Side leg lift")
/* Translators: side-lying-leg-raise: another name */
N_("Lying hip abduction")
/* Translators: side-lying-leg-raise: to spare neck, in lower case */
N_("head resting down on the arm")
/* Translators: side-lying-leg-raise: setup */
N_("Lie on your side, head on your lower arm, lower knee bent, top leg long.")
/* Translators: side-lying-leg-raise: cues 1 */
N_("Toes forward, heel leads the lift")
/* Translators: side-lying-leg-raise: cues 2 */
N_("One hip above the other, body long")
/* Translators: side-lying-leg-raise: cues 3 */
N_("Lower more slowly than you lift")
/* Translators: side-lying-leg-raise: fault */
N_("Leg drifting forward? Draw it back in line with your body.")
/* Translators: side-lying-leg-raise: easier */
N_("Knees bent, feet together, open the top knee.")
/* Translators: side-lying-leg-raise: harder */
N_("Small circles, draw five in the air each time.")
/* Translators: side-lying-quad-stretch: name */
N_("Side-lying quad stretch")
/* Translators: side-lying-quad-stretch: another name */
N_("Side-lying thigh stretch")
/* Translators: side-lying-quad-stretch: to spare knees, in lower case */
N_("towel around the ankle, heel further away")
/* Translators: side-lying-quad-stretch: setup */
N_("Lie on your side, head on your lower arm, and hold the top ankle behind you.")
/* Translators: side-lying-quad-stretch: cues 1 */
N_("Heel towards your buttocks")
/* Translators: side-lying-quad-stretch: cues 2 */
N_("Tuck the hips under slightly")
/* Translators: side-lying-quad-stretch: cues 3 */
N_("Knees level with each other")
/* Translators: side-lying-quad-stretch: cues 4 */
N_("Lower knee bent to steady you")
/* Translators: side-lying-quad-stretch: fault */
N_("Top knee drifting up? Bring it level with the lower one.")
/* Translators: side-lying-quad-stretch: easier */
N_("Towel around ankle, and hold that instead.")
/* Translators: side-lying-quad-stretch: harder */
N_("Press hips forward, and squeeze your buttocks.")
/* Translators: side-plank: name */
N_("Side plank")
/* Translators: side-plank: another name */
N_("Side bridge")
/* Translators: side-plank: to spare shoulders, in lower case */
N_("knees down, shorter holds")
/* Translators: side-plank: to spare neck, in lower case */
N_("top hand supports your head")
/* Translators: side-plank: to spare pressure, in lower case */
N_("short holds, never hold your breath")
/* Translators: side-plank: setup */
N_("Lie on one side, elbow under your shoulder, feet stacked, then lift your hips.")
/* Translators: side-plank: cues 1 */
N_("Straight line, head to feet")
/* Translators: side-plank: cues 2 */
N_("Push the floor away")
/* Translators: side-plank: cues 3 */
N_("Stack your hips, chest facing forward")
/* Translators: side-plank: cues 4 */
N_("Keep breathing")
/* Translators: side-plank: fault */
N_("Hips sinking? Lift your lower side away from the floor.")
/* Translators: side-plank: easier */
N_("Knees down, hips still high.")
/* Translators: side-plank: harder */
N_("Hip dips, lowering slowly and lifting again.")
/* Translators: side-plank-hip-dip: name */
N_("Side plank hip dip")
/* Translators: side-plank-hip-dip: another name */
N_("Side plank dip")
/* Translators: side-plank-hip-dip: to spare shoulders, in lower case */
N_("knees down, smaller dips")
/* Translators: side-plank-hip-dip: to spare neck, in lower case */
N_("top hand supports your head")
/* Translators: side-plank-hip-dip: setup */
N_("Lie on one side, elbow under your shoulder, feet stacked, then lift your hips high.")
/* Translators: side-plank-hip-dip: cues 1 */
N_("Lower your hip towards the floor")
/* Translators: side-plank-hip-dip: cues 2 */
N_("Lift a little above straight")
/* Translators: side-plank-hip-dip: cues 3 */
N_("Chest stays facing forward")
/* Translators: side-plank-hip-dip: cues 4 */
N_("Slow and smooth both ways")
/* Translators: side-plank-hip-dip: fault */
N_("Rolling forward? Open your chest and make the dips smaller.")
/* Translators: side-plank-hip-dip: easier */
N_("No dips, just hold the line.")
/* Translators: side-plank-hip-dip: harder */
N_("Top leg up, held through every dip.")
/* Translators: side-step-heel-curl: name */
N_("Side step heel curl")
/* Translators: side-step-heel-curl: another name */
N_("Heel curl, side to side")
/* Translators: side-step-heel-curl: to spare knees, in lower case */
N_("curl the heel lower")
/* Translators: side-step-heel-curl: to spare balance, in lower case */
N_("hold a chair, smaller steps")
/* Translators: side-step-heel-curl: setup */
N_("Stand with feet wider than your hips, knees soft, hands on your hips.")
/* Translators: side-step-heel-curl: cues 1 */
N_("Shift your weight onto one foot")
/* Translators: side-step-heel-curl: cues 2 */
N_("Curl the other heel towards your buttocks")
/* Translators: side-step-heel-curl: cues 3 */
N_("Step it wide and change sides")
/* Translators: side-step-heel-curl: cues 4 */
N_("Stay tall, steps quiet")
/* Translators: side-step-heel-curl: fault */
N_("Back arching as the heel lifts? Curl it a little lower.")
/* Translators: side-step-heel-curl: easier */
N_("Step and touch, keeping the heel low.")
/* Translators: side-step-heel-curl: harder */
N_("Add arms, pulling both elbows back with every curl.")
/* Translators: single-leg-deadlift: name */
N_("Single-leg deadlift")
/* Translators: single-leg-deadlift: another name */
N_("One-leg deadlift")
/* Translators: single-leg-deadlift: to spare balance, in lower case */
N_("fingertips on a wall or chair")
/* Translators: single-leg-deadlift: to spare lower-back, in lower case */
N_("smaller bow, back long")
/* Translators: single-leg-deadlift: setup */
N_("Stand on one leg, knee soft, arms hanging, eyes on a spot ahead.")
/* Translators: single-leg-deadlift: cues 1 */
N_("Bow forward from your hip")
/* Translators: single-leg-deadlift: cues 2 */
N_("Back leg lifts as your chest lowers")
/* Translators: single-leg-deadlift: cues 3 */
N_("Both hips face the floor")
/* Translators: single-leg-deadlift: cues 4 */
N_("Squeeze your buttocks to stand")
/* Translators: single-leg-deadlift: fault */
N_("Hip opening to the side? Point your back toes straight down.")
/* Translators: single-leg-deadlift: easier */
N_("Both feet down, bow from your hips.")
/* Translators: single-leg-deadlift: harder */
N_("Reach lower, back toes never touching down.")
/* Translators: single-leg-glute-bridge: name */
N_("Single-leg glute bridge")
/* Translators: single-leg-glute-bridge: another name */
N_("One-leg bridge")
/* Translators: single-leg-glute-bridge: to spare lower-back, in lower case */
N_("lift only halfway")
/* Translators: single-leg-glute-bridge: setup */
N_("Lie on your back, one knee bent with the foot flat, the other leg straight, knees level.")
/* Translators: single-leg-glute-bridge: cues 1 */
N_("Push through the planted heel")
/* Translators: single-leg-glute-bridge: cues 2 */
N_("Hips level, both sides rise together")
/* Translators: single-leg-glute-bridge: cues 3 */
N_("Squeeze your buttocks at the top")
/* Translators: single-leg-glute-bridge: cues 4 */
N_("Lower slowly, touch, go again")
/* Translators: single-leg-glute-bridge: fault */
N_("One hip sinking? Lift a little less and press the heel down.")
/* Translators: single-leg-glute-bridge: easier */
N_("March it, hips high, swap feet at the top.")
/* Translators: single-leg-glute-bridge: harder */
N_("Slower down, three counts each time.")
/* Translators: sit-to-stand: name */
N_("Sit-to-stand")
/* Translators: sit-to-stand: another name */
N_("Chair stand")
/* Translators: sit-to-stand: to spare knees, in lower case */
N_("sit on a firm cushion")
/* Translators: sit-to-stand: to spare hips, in lower case */
N_("sit on a firm cushion")
/* Translators: sit-to-stand: to spare balance, in lower case */
N_("hands ready by the seat")
/* Translators: sit-to-stand: setup */
N_("Put the chair against a wall. Sit near the front, feet hip-width apart, arms crossed.")
/* Translators: sit-to-stand: cues 1 */
N_("Lean forward, nose over toes")
/* Translators: sit-to-stand: cues 2 */
N_("Push the floor away and stand")
/* Translators: sit-to-stand: cues 3 */
N_("Knees point over your feet")
/* Translators: sit-to-stand: cues 4 */
N_("Sit down slowly")
/* Translators: sit-to-stand: fault */
N_("Dropping the last bit? Slow down and reach your hips back.")
/* Translators: sit-to-stand: easier */
N_("Use your hands, pressing down on the seat.")
/* Translators: sit-to-stand: harder */
N_("Stagger your feet, so the back leg works harder.")
/* Translators: sit-to-stand-with-hands: name */
N_("Sit-to-stand with hands")
/* Translators: sit-to-stand-with-hands: another name */
N_("Chair stand with hands")
/* Translators: sit-to-stand-with-hands: to spare knees, in lower case */
N_("sit on a firm cushion")
/* Translators: sit-to-stand-with-hands: to spare hips, in lower case */
N_("sit on a firm cushion")
/* Translators: sit-to-stand-with-hands: to spare balance, in lower case */
N_("someone stands close by")
/* Translators: sit-to-stand-with-hands: setup */
N_("Put the chair against a wall. Sit near the front, feet under your knees, hands on the seat.")
/* Translators: sit-to-stand-with-hands: cues 1 */
N_("Lean forward, nose over toes")
/* Translators: sit-to-stand-with-hands: cues 2 */
N_("Press down with hands and feet")
/* Translators: sit-to-stand-with-hands: cues 3 */
N_("Stand up tall")
/* Translators: sit-to-stand-with-hands: cues 4 */
N_("Reach back and sit down slowly")
/* Translators: sit-to-stand-with-hands: fault */
N_("Rocking to get going? Slide your feet back a little.")
/* Translators: sit-to-stand-with-hands: easier */
N_("Higher seat, with a firm cushion under you.")
/* Translators: sit-to-stand-with-hands: harder */
N_("Arms crossed, so your legs do all the work.")
/* Translators: sit-up: name */
N_("Sit-up")
/* Translators: sit-up: to spare lower-back, in lower case */
N_("halfway only, roll down slowly")
/* Translators: sit-up: to spare neck, in lower case */
N_("arms crossed, chin off your chest")
/* Translators: sit-up: to spare pelvic-floor, in lower case */
N_("halfway only, breathe out as you lift")
/* Translators: sit-up: setup */
N_("Lie on your back, knees bent, feet flat, arms crossed on your chest.")
/* Translators: sit-up: cues 1 */
N_("Curl up one part at a time")
/* Translators: sit-up: cues 2 */
N_("Breathe out as you rise")
/* Translators: sit-up: cues 3 */
N_("Feet stay on the floor")
/* Translators: sit-up: cues 4 */
N_("Roll down slowly")
/* Translators: sit-up: fault */
N_("Throwing yourself up? Slow down and come only halfway.")
/* Translators: sit-up: easier */
N_("Halfway only, just the shoulders lift.")
/* Translators: sit-up: harder */
N_("Legs straight, hands and feet meet above you.")
/* Translators: skater: name */
N_("Skater")
/* Translators: skater: another name */
N_("Skater hop")
/* Translators: skater: another name */
N_("Side-to-side leap")
/* Translators: skater: to spare balance, in lower case */
N_("tap the free foot down each time")
/* Translators: skater: setup */
N_("Stand on one leg, knee soft, the other foot behind, with room on both sides.")
/* Translators: skater: cues 1 */
N_("Leap sideways, land on one foot")
/* Translators: skater: cues 2 */
N_("Land softly, steady yourself")
/* Translators: skater: cues 3 */
N_("Knee in line with toes")
/* Translators: skater: cues 4 */
N_("Hips back, chest lifted")
/* Translators: skater: fault */
N_("Knee dropping inwards on landing? Leap shorter and sit back.")
/* Translators: skater: easier */
N_("No leap, step to the side and tap.")
/* Translators: skater: harder */
N_("Leap further, touch the floor by your foot.")
/* Translators: skipping-without-a-rope: name */
N_("Skipping without a rope")
/* Translators: skipping-without-a-rope: another name */
N_("Air skipping")
/* Translators: skipping-without-a-rope: another name */
N_("Pretend rope")
/* Translators: skipping-without-a-rope: setup */
N_("Stand tall, feet together, elbows close, hands at hip height as if holding a rope.")
/* Translators: skipping-without-a-rope: cues 1 */
N_("Small hops, just off the floor")
/* Translators: skipping-without-a-rope: cues 2 */
N_("Land lightly, knees soft")
/* Translators: skipping-without-a-rope: cues 3 */
N_("Turn from the wrists")
/* Translators: skipping-without-a-rope: cues 4 */
N_("Shoulders loose, look ahead")
/* Translators: skipping-without-a-rope: fault */
N_("Jumping too high? Clear only the thickness of a rope.")
/* Translators: skipping-without-a-rope: easier */
N_("March instead, wrists still turning.")
/* Translators: skipping-without-a-rope: harder */
N_("Double turns, circle your wrists twice for every hop.")
/* Translators: slow-mountain-climber: name */
N_("Slow mountain climber")
/* Translators: slow-mountain-climber: another name */
N_("Plank knee-in")
/* Translators: slow-mountain-climber: to spare wrists, in lower case */
N_("on fists or on dumbbells")
/* Translators: slow-mountain-climber: to spare lower-back, in lower case */
N_("knee in less far")
/* Translators: slow-mountain-climber: setup */
N_("Start on hands and toes, hands under your shoulders, body in one long line.")
/* Translators: slow-mountain-climber: cues 1 */
N_("Draw one knee slowly towards your chest")
/* Translators: slow-mountain-climber: cues 2 */
N_("Hips stay low and level")
/* Translators: slow-mountain-climber: cues 3 */
N_("Step back, then change legs")
/* Translators: slow-mountain-climber: cues 4 */
N_("Breathe out as the knee comes in")
/* Translators: slow-mountain-climber: fault */
N_("Hips lifting as the knee comes in? Bring it in less far.")
/* Translators: slow-mountain-climber: easier */
N_("Feet still, simply hold the long line.")
/* Translators: slow-mountain-climber: harder */
N_("Running knees, quick and light.")
/* Translators: split-squat: name */
N_("Split squat")
/* Translators: split-squat: another name */
N_("Static lunge")
/* Translators: split-squat: to spare knees, in lower case */
N_("half depth, shin upright")
/* Translators: split-squat: to spare balance, in lower case */
N_("fingertips on a wall or chair")
/* Translators: split-squat: setup */
N_("Take a long step forward and stay: feet hip-width, back heel up, body tall.")
/* Translators: split-squat: cues 1 */
N_("Sink straight down, not forward")
/* Translators: split-squat: cues 2 */
N_("Front heel stays down")
/* Translators: split-squat: cues 3 */
N_("Front knee follows your toes")
/* Translators: split-squat: cues 4 */
N_("Push up through the front foot")
/* Translators: split-squat: fault */
N_("Wobbling? Set your feet as if on two rails, hip-width apart.")
/* Translators: split-squat: easier */
N_("Feet level, squat on both legs.")
/* Translators: split-squat: harder */
N_("Step back, return to standing after each one.")
/* Translators: squat: name */
N_("Squat")
/* Translators: squat: another name */
N_("Body-weight squat")
/* Translators: squat: another name */
N_("Air squat")
/* Translators: squat: to spare knees, in lower case */
N_("go only as low as feels easy")
/* Translators: squat: to spare ankles, in lower case */
N_("heels on a folded towel")
/* Translators: squat: setup */
N_("Stand with your feet a little wider than your hips, toes slightly out.")
/* Translators: squat: cues 1 */
N_("Sit back and down")
/* Translators: squat: cues 2 */
N_("Knees follow your toes")
/* Translators: squat: cues 3 */
N_("Heels stay on the floor")
/* Translators: squat: cues 4 */
N_("Stand tall and breathe out")
/* Translators: squat: fault */
N_("Knees falling in? Press them gently out over your toes.")
/* Translators: squat: easier */
N_("To a chair, then stand again.")
/* Translators: squat: harder */
N_("Pause low, for two slow counts.")
/* Translators: squat-jump: name */
N_("Squat jump")
/* Translators: squat-jump: another name */
N_("Jump squat")
/* Translators: squat-jump: setup */
N_("Stand with feet a little wider than your hips, toes slightly out, arms ready to swing.")
/* Translators: squat-jump: cues 1 */
N_("Land softly, knees bent")
/* Translators: squat-jump: cues 2 */
N_("Sit back, then jump tall")
/* Translators: squat-jump: cues 3 */
N_("Knees in line with toes")
/* Translators: squat-jump: cues 4 */
N_("Settle before the next one")
/* Translators: squat-jump: fault */
N_("Knees falling inwards on landing? Jump lower and press them out.")
/* Translators: squat-jump: easier */
N_("No jump, squat and rise onto your toes.")
/* Translators: squat-jump: harder */
N_("Knees tucked, draw them up in the air.")
/* Translators: squat-thrust: name */
N_("Squat thrust")
/* Translators: squat-thrust: another name */
N_("Half burpee")
/* Translators: squat-thrust: to spare wrists, in lower case */
N_("on fists, step instead of jump")
/* Translators: squat-thrust: to spare lower-back, in lower case */
N_("step back, hips kept level")
/* Translators: squat-thrust: to spare knees, in lower case */
N_("step back and in, no jump")
/* Translators: squat-thrust: to spare pelvic-floor, in lower case */
N_("step back and in, no jump")
/* Translators: squat-thrust: to spare pressure, in lower case */
N_("stand up more slowly")
/* Translators: squat-thrust: setup */
N_("Stand with your feet hip-width apart and a body's length of clear floor behind you.")
/* Translators: squat-thrust: cues 1 */
N_("Squat, hands flat on the floor")
/* Translators: squat-thrust: cues 2 */
N_("Jump both feet back")
/* Translators: squat-thrust: cues 3 */
N_("Hips level, then jump in")
/* Translators: squat-thrust: cues 4 */
N_("Stand up tall")
/* Translators: squat-thrust: fault */
N_("Hips sagging as you land? Draw your tummy in before you jump.")
/* Translators: squat-thrust: easier */
N_("No jump, one foot back and in at a time.")
/* Translators: squat-thrust: harder */
N_("Push-up too, then a jump at the top.")
/* Translators: squat-to-calf-raise: name */
N_("Squat to calf raise")
/* Translators: squat-to-calf-raise: another name */
N_("Squat to heel raise")
/* Translators: squat-to-calf-raise: to spare knees, in lower case */
N_("go only as low as feels easy")
/* Translators: squat-to-calf-raise: to spare balance, in lower case */
N_("fingertips on a wall")
/* Translators: squat-to-calf-raise: to spare ankles, in lower case */
N_("lift your heels a little")
/* Translators: squat-to-calf-raise: setup */
N_("Stand with your feet hip-width apart, arms relaxed, weight on the whole foot.")
/* Translators: squat-to-calf-raise: cues 1 */
N_("Sit back into your squat")
/* Translators: squat-to-calf-raise: cues 2 */
N_("Stand up and rise onto your toes")
/* Translators: squat-to-calf-raise: cues 3 */
N_("Pause on top, ankles straight")
/* Translators: squat-to-calf-raise: cues 4 */
N_("Lower your heels quietly")
/* Translators: squat-to-calf-raise: fault */
N_("Tipping forward? Stand fully tall first, then lift your heels.")
/* Translators: squat-to-calf-raise: easier */
N_("Heels down, just squat and stand.")
/* Translators: squat-to-calf-raise: harder */
N_("Small jump, landing softly with bent knees.")
/* Translators: squat-with-reach: name */
N_("Squat with reach")
/* Translators: squat-with-reach: another name */
N_("Squat and reach")
/* Translators: squat-with-reach: to spare knees, in lower case */
N_("a half squat")
/* Translators: squat-with-reach: to spare shoulders, in lower case */
N_("reach only to shoulder height")
/* Translators: squat-with-reach: setup */
N_("Stand with feet a little wider than hips, toes slightly out, arms hanging.")
/* Translators: squat-with-reach: cues 1 */
N_("Sit back and down")
/* Translators: squat-with-reach: cues 2 */
N_("Stand and reach up high")
/* Translators: squat-with-reach: cues 3 */
N_("Knees follow the toes")
/* Translators: squat-with-reach: cues 4 */
N_("Heels stay down")
/* Translators: squat-with-reach: fault */
N_("Knees falling inwards? Press them out over the toes.")
/* Translators: squat-with-reach: easier */
N_("Half squat, hands reaching only to shoulder height.")
/* Translators: squat-with-reach: harder */
N_("Deep squat hold, elbows inside the knees.")
/* Translators: staggered-sit-to-stand: name */
N_("Staggered sit-to-stand")
/* Translators: staggered-sit-to-stand: another name */
N_("Chair stand, one foot back")
/* Translators: staggered-sit-to-stand: to spare knees, in lower case */
N_("feet level, hands on the seat")
/* Translators: staggered-sit-to-stand: to spare balance, in lower case */
N_("one hand stays on the seat")
/* Translators: staggered-sit-to-stand: setup */
N_("Chair against a wall. Sit near the front, one foot under you, the other half a step ahead.")
/* Translators: staggered-sit-to-stand: cues 1 */
N_("Lean forward over the back foot")
/* Translators: staggered-sit-to-stand: cues 2 */
N_("Stand up mostly through that leg")
/* Translators: staggered-sit-to-stand: cues 3 */
N_("The front foot only steadies you")
/* Translators: staggered-sit-to-stand: cues 4 */
N_("Take three counts to sit down")
/* Translators: staggered-sit-to-stand: fault */
N_("Front leg taking over? Slide that foot further forward.")
/* Translators: staggered-sit-to-stand: easier */
N_("Feet level, both legs sharing the work.")
/* Translators: staggered-sit-to-stand: harder */
N_("Toes up, front foot resting on its heel.")
/* Translators: standing-calf-stretch: name */
N_("Standing calf stretch")
/* Translators: standing-calf-stretch: another name */
N_("Lower-leg stretch")
/* Translators: standing-calf-stretch: to spare ankles, in lower case */
N_("a shorter step, heel still down")
/* Translators: standing-calf-stretch: setup */
N_("Step one foot well back, toes forward, and rest both hands on your front thigh.")
/* Translators: standing-calf-stretch: cues 1 */
N_("Back heel into the floor")
/* Translators: standing-calf-stretch: cues 2 */
N_("Back leg straight")
/* Translators: standing-calf-stretch: cues 3 */
N_("Bend the front knee, lean forward")
/* Translators: standing-calf-stretch: cues 4 */
N_("Toes point straight ahead")
/* Translators: standing-calf-stretch: fault */
N_("Back foot turning out? Point its toes straight ahead.")
/* Translators: standing-calf-stretch: easier */
N_("Shorter step, with both hands on a wall.")
/* Translators: standing-calf-stretch: harder */
N_("Longer step, heel still heavy on the floor.")
/* Translators: standing-hamstring-stretch: name */
N_("Standing hamstring stretch")
/* Translators: standing-hamstring-stretch: another name */
N_("Heel-forward stretch")
/* Translators: standing-hamstring-stretch: to spare lower-back, in lower case */
N_("less lean, both hands on the thigh")
/* Translators: standing-hamstring-stretch: to spare balance, in lower case */
N_("one hand on a wall")
/* Translators: standing-hamstring-stretch: setup */
N_("Put one heel in front, toes up, bend the back knee, hands on that thigh.")
/* Translators: standing-hamstring-stretch: cues 1 */
N_("Sit the hips back")
/* Translators: standing-hamstring-stretch: cues 2 */
N_("Keep your back long")
/* Translators: standing-hamstring-stretch: cues 3 */
N_("Front knee straight, never locked")
/* Translators: standing-hamstring-stretch: cues 4 */
N_("Both hip bones face forward")
/* Translators: standing-hamstring-stretch: fault */
N_("Back rounding? Lift your chest and tip from the hips.")
/* Translators: standing-hamstring-stretch: easier */
N_("Front knee bent, and lean forward less.")
/* Translators: standing-hamstring-stretch: harder */
N_("Hips further back, chest lower, back still long.")
/* Translators: standing-quad-stretch: name */
N_("Standing quad stretch")
/* Translators: standing-quad-stretch: another name */
N_("Standing thigh stretch")
/* Translators: standing-quad-stretch: to spare knees, in lower case */
N_("hold a towel looped around the ankle")
/* Translators: standing-quad-stretch: to spare balance, in lower case */
N_("fingertips on a wall")
/* Translators: standing-quad-stretch: setup */
N_("Stand tall on one leg, bend the other knee and hold that ankle behind you.")
/* Translators: standing-quad-stretch: cues 1 */
N_("Knees side by side")
/* Translators: standing-quad-stretch: cues 2 */
N_("Tuck the hips under slightly")
/* Translators: standing-quad-stretch: cues 3 */
N_("Standing knee soft")
/* Translators: standing-quad-stretch: cues 4 */
N_("Breathe out, let the thigh lengthen")
/* Translators: standing-quad-stretch: fault */
N_("Lower back arching? Tuck the hips and let the heel drop.")
/* Translators: standing-quad-stretch: easier */
N_("Hold a wall, and let the heel hang lower.")
/* Translators: standing-quad-stretch: harder */
N_("Squeeze your buttocks, and press the hips gently forward.")
/* Translators: star-jump: name */
N_("Star jump")
/* Translators: star-jump: to spare shoulders, in lower case */
N_("arms only to shoulder height")
/* Translators: star-jump: setup */
N_("Feet hip-width, sit into a shallow squat, hands low in front of your knees.")
/* Translators: star-jump: cues 1 */
N_("Land softly, feet back under you")
/* Translators: star-jump: cues 2 */
N_("Jump up, arms and legs wide")
/* Translators: star-jump: cues 3 */
N_("Sit back before each jump")
/* Translators: star-jump: fault */
N_("Landing with wide, stiff legs? Bring your feet in, bend your knees.")
/* Translators: star-jump: easier */
N_("Smaller jump, feet out and in, arms overhead.")
/* Translators: star-jump: harder */
N_("Knees up, tuck them in the air instead.")
/* Translators: step-back-burpee: name */
N_("Step-back burpee")
/* Translators: step-back-burpee: another name */
N_("Walk-back burpee")
/* Translators: step-back-burpee: another name */
N_("Low-impact burpee")
/* Translators: step-back-burpee: to spare wrists, in lower case */
N_("hands on a chair against a wall")
/* Translators: step-back-burpee: to spare knees, in lower case */
N_("hands on a chair against a wall")
/* Translators: step-back-burpee: to spare pressure, in lower case */
N_("stand up more slowly")
/* Translators: step-back-burpee: setup */
N_("Stand tall with your feet hip-width apart and clear floor behind you.")
/* Translators: step-back-burpee: cues 1 */
N_("Squat, hands flat on the floor")
/* Translators: step-back-burpee: cues 2 */
N_("One foot steps back, then the other")
/* Translators: step-back-burpee: cues 3 */
N_("Step in and stand tall")
/* Translators: step-back-burpee: cues 4 */
N_("Next time, lead with the other foot")
/* Translators: step-back-burpee: fault */
N_("Folding over straight legs? Bend your knees and squat down to the floor.")
/* Translators: step-back-burpee: easier */
N_("No floor, just squat and stand tall.")
/* Translators: step-back-burpee: harder */
N_("Jump back, both feet together, and in again.")
/* Translators: step-jack: name */
N_("Step jack")
/* Translators: step-jack: another name */
N_("Half jack")
/* Translators: step-jack: another name */
N_("Low-impact jack")
/* Translators: step-jack: to spare shoulders, in lower case */
N_("arms only to shoulder height")
/* Translators: step-jack: setup */
N_("Stand tall with your feet together, arms by your sides and room to step both ways.")
/* Translators: step-jack: cues 1 */
N_("Step wide to one side")
/* Translators: step-jack: cues 2 */
N_("Sweep both arms overhead as you step")
/* Translators: step-jack: cues 3 */
N_("Feet together, arms down, other side")
/* Translators: step-jack: cues 4 */
N_("Keep your knees soft")
/* Translators: step-jack: fault */
N_("Feet landing heavily? Place the foot first, then move your weight across.")
/* Translators: step-jack: easier */
N_("Hands low, just step and touch.")
/* Translators: step-jack: harder */
N_("Jump it, both feet out and in.")
/* Translators: step-touch: name */
N_("Step touch")
/* Translators: step-touch: another name */
N_("Side step")
/* Translators: step-touch: another name */
N_("Side tap")
/* Translators: step-touch: setup */
N_("Stand tall with your feet together, knees soft, and room to step both ways.")
/* Translators: step-touch: cues 1 */
N_("Step wide to the side")
/* Translators: step-touch: cues 2 */
N_("Bring the other foot in to touch")
/* Translators: step-touch: cues 3 */
N_("Then back the other way")
/* Translators: step-touch: cues 4 */
N_("Knees soft, chest lifted")
/* Translators: step-touch: fault */
N_("Looking down at your feet? Lift your eyes and open your chest.")
/* Translators: step-touch: easier */
N_("March instead, feet under your hips.")
/* Translators: step-touch: harder */
N_("Step wider, both arms sweeping overhead.")
/* Translators: step-touch-with-reach: name */
N_("Step touch with reach")
/* Translators: step-touch-with-reach: another name */
N_("Side step and reach")
/* Translators: step-touch-with-reach: to spare shoulders, in lower case */
N_("reach only to chest height")
/* Translators: step-touch-with-reach: setup */
N_("Stand tall with feet together, knees soft, arms by your sides.")
/* Translators: step-touch-with-reach: cues 1 */
N_("Step out, bring the feet together")
/* Translators: step-touch-with-reach: cues 2 */
N_("Reach up with every step")
/* Translators: step-touch-with-reach: cues 3 */
N_("Soft knees, quiet feet")
/* Translators: step-touch-with-reach: fault */
N_("Steps shrinking? Step wide and push off the floor.")
/* Translators: step-touch-with-reach: easier */
N_("March instead, swinging the arms by your sides.")
/* Translators: step-touch-with-reach: harder */
N_("Step jack, arms sweeping wide overhead.")
/* Translators: step-up: name */
N_("Step-up")
/* Translators: step-up: another name */
N_("Stepping up")
/* Translators: step-up: to spare knees, in lower case */
N_("use a lower step, rise slowly")
/* Translators: step-up: to spare balance, in lower case */
N_("one hand on a wall")
/* Translators: step-up: setup */
N_("Stand facing a firm, low step, feet hip-width apart.")
/* Translators: step-up: cues 1 */
N_("Whole foot on the step")
/* Translators: step-up: cues 2 */
N_("Press through the heel and stand tall")
/* Translators: step-up: cues 3 */
N_("Step down slowly and quietly")
/* Translators: step-up: cues 4 */
N_("Change the leading leg each time")
/* Translators: step-up: fault */
N_("Pushing off the back foot? Lean in and use the front leg.")
/* Translators: step-up: easier */
N_("Lower step, with one hand on a wall.")
/* Translators: step-up: harder */
N_("Knee drive, lifting the free knee to hip height.")
/* Translators: step-up-with-knee-drive: name */
N_("Step-up with knee drive")
/* Translators: step-up-with-knee-drive: another name */
N_("Step-up with knee lift")
/* Translators: step-up-with-knee-drive: to spare knees, in lower case */
N_("use a lower step, rise slowly")
/* Translators: step-up-with-knee-drive: to spare balance, in lower case */
N_("fingertips on a wall beside you")
/* Translators: step-up-with-knee-drive: setup */
N_("Stand facing a firm step with one whole foot on it. This leg works first.")
/* Translators: step-up-with-knee-drive: cues 1 */
N_("Step up and stand fully tall")
/* Translators: step-up-with-knee-drive: cues 2 */
N_("Bring the free knee to hip height")
/* Translators: step-up-with-knee-drive: cues 3 */
N_("Lower slowly, the lead foot stays put")
/* Translators: step-up-with-knee-drive: fault */
N_("Leaning back as the knee lifts? Grow tall and look straight ahead.")
/* Translators: step-up-with-knee-drive: easier */
N_("No knee drive, just step up and down.")
/* Translators: step-up-with-knee-drive: harder */
N_("Hold on top, two slow counts with the knee high.")
/* Translators: strap-row: name */
N_("Strap row")
/* Translators: strap-row: another name */
N_("Leaning row")
/* Translators: strap-row: to spare grip, in lower case */
N_("stand taller, fewer pulls")
/* Translators: strap-row: to spare shoulders, in lower case */
N_("elbows low, shorter pull")
/* Translators: strap-row: to spare lower-back, in lower case */
N_("stand more upright")
/* Translators: strap-row: setup */
N_("Hold a strap fixed at chest height, arms long, walk your feet forward and lean back.")
/* Translators: strap-row: cues 1 */
N_("Test the strap before you lean")
/* Translators: strap-row: cues 2 */
N_("Pull your chest towards your hands")
/* Translators: strap-row: cues 3 */
N_("Lower slowly to long arms")
/* Translators: strap-row: cues 4 */
N_("Body straight, buttocks tight")
/* Translators: strap-row: fault */
N_("Hips dropping? Squeeze your buttocks and stand more upright.")
/* Translators: strap-row: easier */
N_("Stand taller, with your feet further back.")
/* Translators: strap-row: harder */
N_("Feet forward, so you lean back further.")
/* Translators: suitcase-march: name */
N_("Suitcase march")
/* Translators: suitcase-march: another name */
N_("Suitcase carry on the spot")
/* Translators: suitcase-march: to spare lower-back, in lower case */
N_("lighter weight, lower knees")
/* Translators: suitcase-march: to spare grip, in lower case */
N_("lighter weight, shorter turns")
/* Translators: suitcase-march: to spare balance, in lower case */
N_("free hand on a wall")
/* Translators: suitcase-march: setup */
N_("Stand tall with one dumbbell at your side, arm straight, free hand relaxed.")
/* Translators: suitcase-march: cues 1 */
N_("Stay upright, no leaning either way")
/* Translators: suitcase-march: cues 2 */
N_("Lift each knee slowly")
/* Translators: suitcase-march: cues 3 */
N_("Keep both shoulders level")
/* Translators: suitcase-march: cues 4 */
N_("Hold the weight off your leg")
/* Translators: suitcase-march: fault */
N_("Tipping to one side? Take a lighter weight and grow taller.")
/* Translators: suitcase-march: easier */
N_("Empty hands, march tall on the spot.")
/* Translators: suitcase-march: harder */
N_("Heavier weight, slower knees.")
/* Translators: sumo-squat: name */
N_("Sumo squat")
/* Translators: sumo-squat: another name */
N_("Wide squat")
/* Translators: sumo-squat: another name */
N_("Plié squat")
/* Translators: sumo-squat: to spare knees, in lower case */
N_("stay higher, knees over your toes")
/* Translators: sumo-squat: to spare hips, in lower case */
N_("feet closer, toes less turned out")
/* Translators: sumo-squat: setup */
N_("Step your feet wide, toes turned out, hands together at your chest.")
/* Translators: sumo-squat: cues 1 */
N_("Sit straight down, back upright")
/* Translators: sumo-squat: cues 2 */
N_("Knees wide, over your toes")
/* Translators: sumo-squat: cues 3 */
N_("Squeeze your inner thighs to stand")
/* Translators: sumo-squat: cues 4 */
N_("Weight on the whole foot")
/* Translators: sumo-squat: fault */
N_("Knees rolling in? Turn your toes out less and open your knees.")
/* Translators: sumo-squat: easier */
N_("Feet narrower, as in an ordinary squat.")
/* Translators: sumo-squat: harder */
N_("Side lunge, bending one knee at a time.")
/* Translators: superman: name */
N_("Superman")
/* Translators: superman: another name */
N_("Prone arm and leg lift")
/* Translators: superman: to spare lower-back, in lower case */
N_("legs down, lift only a little")
/* Translators: superman: to spare neck, in lower case */
N_("look down, forehead near the mat")
/* Translators: superman: setup */
N_("Lie on your front, arms reaching overhead, legs long, forehead near the mat.")
/* Translators: superman: cues 1 */
N_("Lift arms, chest and legs together")
/* Translators: superman: cues 2 */
N_("Reach long rather than high")
/* Translators: superman: cues 3 */
N_("Look down, neck long")
/* Translators: superman: cues 4 */
N_("Lower slowly and breathe")
/* Translators: superman: fault */
N_("Head tipping back? Keep looking down at the mat.")
/* Translators: superman: easier */
N_("One arm, opposite leg, then change.")
/* Translators: superman: harder */
N_("Longer hold, up for two slow breaths.")
/* Translators: supported-back-leg-lift: name */
N_("Supported back leg lift")
/* Translators: supported-back-leg-lift: another name */
N_("Back leg lift with a chair")
/* Translators: supported-back-leg-lift: to spare balance, in lower case */
N_("toes slide back along the floor")
/* Translators: supported-back-leg-lift: to spare lower-back, in lower case */
N_("squeeze first, lift only a little")
/* Translators: supported-back-leg-lift: setup */
N_("Stand behind a sturdy chair, hands on its back, leaning forward slightly, feet together.")
/* Translators: supported-back-leg-lift: cues 1 */
N_("Reach one leg straight back")
/* Translators: supported-back-leg-lift: cues 2 */
N_("Squeeze your buttocks at the top")
/* Translators: supported-back-leg-lift: cues 3 */
N_("Both hips keep facing the chair")
/* Translators: supported-back-leg-lift: cues 4 */
N_("Lower slowly, toes touch lightly")
/* Translators: supported-back-leg-lift: fault */
N_("Lower back hollowing? Lift the foot only a hand's height.")
/* Translators: supported-back-leg-lift: easier */
N_("Toes down, sliding the foot back along the floor.")
/* Translators: supported-back-leg-lift: harder */
N_("Fingertips only, holding each lift for three counts.")
/* Translators: supported-calf-raise: name */
N_("Supported calf raise")
/* Translators: supported-calf-raise: another name */
N_("Calf raise with a chair")
/* Translators: supported-calf-raise: to spare balance, in lower case */
N_("chair seat against a wall, both hands on")
/* Translators: supported-calf-raise: to spare ankles, in lower case */
N_("rise only halfway")
/* Translators: supported-calf-raise: setup */
N_("Stand behind a sturdy chair, feet hip-width apart, both hands resting on its back.")
/* Translators: supported-calf-raise: cues 1 */
N_("Rise tall onto your toes")
/* Translators: supported-calf-raise: cues 2 */
N_("Press through your big toes")
/* Translators: supported-calf-raise: cues 3 */
N_("Lower slowly, heels down quietly")
/* Translators: supported-calf-raise: cues 4 */
N_("Hold the chair lightly")
/* Translators: supported-calf-raise: fault */
N_("Ankles rolling outwards? Rise less and press the big toes down.")
/* Translators: supported-calf-raise: easier */
N_("Sit down, and rock between heels and toes.")
/* Translators: supported-calf-raise: harder */
N_("Let go, hands ready just above the chair.")
/* Translators: supported-side-leg-lift: name */
N_("Supported side leg lift")
/* Translators: supported-side-leg-lift: another name */
N_("Side leg lift with a chair")
/* Translators: supported-side-leg-lift: to spare balance, in lower case */
N_("both hands on, toes brushing the floor")
/* Translators: supported-side-leg-lift: to spare hips, in lower case */
N_("slide the foot out low")
/* Translators: supported-side-leg-lift: setup */
N_("Stand behind a sturdy chair, both hands on its back, feet together, toes forward.")
/* Translators: supported-side-leg-lift: cues 1 */
N_("Lift one leg out to the side")
/* Translators: supported-side-leg-lift: cues 2 */
N_("Lead with the heel, toes forward")
/* Translators: supported-side-leg-lift: cues 3 */
N_("Keep the standing knee soft")
/* Translators: supported-side-leg-lift: cues 4 */
N_("Lower it without letting it swing")
/* Translators: supported-side-leg-lift: fault */
N_("Body tipping over? Stand tall and lift the leg lower.")
/* Translators: supported-side-leg-lift: easier */
N_("Sit down, and step out one foot at a time.")
/* Translators: supported-side-leg-lift: harder */
N_("Fingertips only, with a pause at the top.")
/* Translators: thoracic-turn-on-all-fours: name */
N_("Thoracic turn on all fours")
/* Translators: thoracic-turn-on-all-fours: another name */
N_("Upper-back turn")
/* Translators: thoracic-turn-on-all-fours: to spare wrists, in lower case */
N_("lean on the forearm")
/* Translators: thoracic-turn-on-all-fours: to spare knees, in lower case */
N_("mat folded double under the knees")
/* Translators: thoracic-turn-on-all-fours: to spare shoulders, in lower case */
N_("hand on the shoulder, not the head")
/* Translators: thoracic-turn-on-all-fours: setup */
N_("Come onto hands and knees and place one hand behind your head.")
/* Translators: thoracic-turn-on-all-fours: cues 1 */
N_("Elbow down towards the other arm")
/* Translators: thoracic-turn-on-all-fours: cues 2 */
N_("Then open it to the ceiling")
/* Translators: thoracic-turn-on-all-fours: cues 3 */
N_("Eyes follow the elbow")
/* Translators: thoracic-turn-on-all-fours: cues 4 */
N_("Hips stay still")
/* Translators: thoracic-turn-on-all-fours: fault */
N_("Hips swaying across? Keep your weight even on both knees.")
/* Translators: thoracic-turn-on-all-fours: easier */
N_("Hand on shoulder, with a smaller, slower turn.")
/* Translators: thoracic-turn-on-all-fours: harder */
N_("Hips on heels, then turn as before.")
/* Translators: thruster: name */
N_("Thruster")
/* Translators: thruster: another name */
N_("Squat to press")
/* Translators: thruster: to spare shoulders, in lower case */
N_("press only to forehead height")
/* Translators: thruster: to spare knees, in lower case */
N_("squat only halfway")
/* Translators: thruster: to spare lower-back, in lower case */
N_("lighter weights, ribs down")
/* Translators: thruster: to spare pressure, in lower case */
N_("light weights, never hold your breath")
/* Translators: thruster: setup */
N_("Stand with feet shoulder-width apart, a dumbbell at each shoulder, elbows slightly forward.")
/* Translators: thruster: cues 1 */
N_("Squat down, heels heavy")
/* Translators: thruster: cues 2 */
N_("Drive up through your legs")
/* Translators: thruster: cues 3 */
N_("Press overhead as you stand")
/* Translators: thruster: cues 4 */
N_("Lower softly to your shoulders")
/* Translators: thruster: fault */
N_("Leaning back at the top? Squeeze your buttocks and draw your ribs down.")
/* Translators: thruster: easier */
N_("Small knee dip, then press.")
/* Translators: thruster: harder */
N_("Pause low, in each squat.")
/* Translators: toe-touch-sweep: name */
N_("Toe-touch sweep")
/* Translators: toe-touch-sweep: another name */
N_("Hamstring sweep")
/* Translators: toe-touch-sweep: to spare lower-back, in lower case */
N_("hands only to the knee")
/* Translators: toe-touch-sweep: to spare balance, in lower case */
N_("feet a little wider apart")
/* Translators: toe-touch-sweep: to spare pressure, in lower case */
N_("keep the head above the hips")
/* Translators: toe-touch-sweep: setup */
N_("Stand tall and place one heel a short step in front, toes up.")
/* Translators: toe-touch-sweep: cues 1 */
N_("Sit back over the rear leg")
/* Translators: toe-touch-sweep: cues 2 */
N_("Sweep both hands past the foot")
/* Translators: toe-touch-sweep: cues 3 */
N_("Come up tall")
/* Translators: toe-touch-sweep: cues 4 */
N_("Step in and change")
/* Translators: toe-touch-sweep: fault */
N_("Back rounding? Tip from the hips and lift your chest.")
/* Translators: toe-touch-sweep: easier */
N_("Hands to shin, with the front knee soft.")
/* Translators: toe-touch-sweep: harder */
N_("Arms overhead, reaching up each time you rise.")
/* Translators: torso-turn: name */
N_("Torso turn")
/* Translators: torso-turn: another name */
N_("Standing twist")
/* Translators: torso-turn: to spare lower-back, in lower case */
N_("smaller turn, hips free to follow")
/* Translators: torso-turn: setup */
N_("Stand with feet wider than hips, knees soft, arms folded at chest height.")
/* Translators: torso-turn: cues 1 */
N_("Turn from the ribs")
/* Translators: torso-turn: cues 2 */
N_("Hips face forward")
/* Translators: torso-turn: cues 3 */
N_("Look where you turn")
/* Translators: torso-turn: cues 4 */
N_("Smooth, never flung")
/* Translators: torso-turn: fault */
N_("Knees twisting along? Keep both pointing straight ahead.")
/* Translators: torso-turn: easier */
N_("Smaller turn, hands resting on the shoulders.")
/* Translators: torso-turn: harder */
N_("Deeper knee bend, hips still facing forward.")
/* Translators: triceps-kickback: name */
N_("Triceps kickback")
/* Translators: triceps-kickback: another name */
N_("Dumbbell kickback")
/* Translators: triceps-kickback: to spare lower-back, in lower case */
N_("one arm, other hand on your thigh")
/* Translators: triceps-kickback: setup */
N_("Stand with feet hip-width, hips pushed back, back flat, dumbbells in hand, elbows beside your ribs.")
/* Translators: triceps-kickback: cues 1 */
N_("Straighten your elbows behind you")
/* Translators: triceps-kickback: cues 2 */
N_("Upper arms stay still")
/* Translators: triceps-kickback: cues 3 */
N_("Back long, eyes on the floor")
/* Translators: triceps-kickback: cues 4 */
N_("Bend slowly, no swinging")
/* Translators: triceps-kickback: fault */
N_("Elbows dropping? Keep them level with your back.")
/* Translators: triceps-kickback: easier */
N_("One arm, rest the other hand on your thigh.")
/* Translators: triceps-kickback: harder */
N_("Longer pause, hold the arms straight for two counts.")
/* Translators: tuck-jump: name */
N_("Tuck jump")
/* Translators: tuck-jump: another name */
N_("Knee-tuck jump")
/* Translators: tuck-jump: setup */
N_("Stand with feet hip-width, knees soft, elbows bent, eyes straight ahead.")
/* Translators: tuck-jump: cues 1 */
N_("Land softly, then reset")
/* Translators: tuck-jump: cues 2 */
N_("Knees up, chest stays tall")
/* Translators: tuck-jump: cues 3 */
N_("Swing your arms for height")
/* Translators: tuck-jump: fault */
N_("Bending forward to meet the knees? Stay tall and tuck less.")
/* Translators: tuck-jump: easier */
N_("Legs long, squat and jump without the tuck.")
/* Translators: upper-back-hug: name */
N_("Upper-back hug")
/* Translators: upper-back-hug: another name */
N_("Hug stretch")
/* Translators: upper-back-hug: to spare shoulders, in lower case */
N_("hands only as far as the shoulders")
/* Translators: upper-back-hug: setup */
N_("Stand tall, wrap both arms around yourself and rest your hands on your shoulder blades.")
/* Translators: upper-back-hug: cues 1 */
N_("Round the upper back gently")
/* Translators: upper-back-hug: cues 2 */
N_("Chin sinks towards the chest")
/* Translators: upper-back-hug: cues 3 */
N_("Breathe wide between the shoulder blades")
/* Translators: upper-back-hug: cues 4 */
N_("Halfway, swap the top arm")
/* Translators: upper-back-hug: fault */
N_("Bending at the waist? Keep the hips still and round higher up.")
/* Translators: upper-back-hug: easier */
N_("Hands on shoulders, arms simply crossed in front.")
/* Translators: upper-back-hug: harder */
N_("Elbows up higher, and push them away from you.")
/* Translators: v-up: name */
N_("V-up")
/* Translators: v-up: another name */
N_("Jackknife sit-up")
/* Translators: v-up: to spare lower-back, in lower case */
N_("knees bent, tuck in")
/* Translators: v-up: to spare neck, in lower case */
N_("look up, chin off your chest")
/* Translators: v-up: to spare pelvic-floor, in lower case */
N_("one leg at a time, breathe out")
/* Translators: v-up: setup */
N_("Lie on your back, arms overhead, legs long and together.")
/* Translators: v-up: cues 1 */
N_("Lift arms and legs together")
/* Translators: v-up: cues 2 */
N_("Meet above your hips")
/* Translators: v-up: cues 3 */
N_("Breathe out as you fold")
/* Translators: v-up: cues 4 */
N_("Lower both ends slowly")
/* Translators: v-up: fault */
N_("Dropping back down? Take two counts to lower, or bend your knees.")
/* Translators: v-up: easier */
N_("Feet down, knees bent, sit up instead.")
/* Translators: v-up: harder */
N_("Lower slowly, hands and heels never quite landing.")
/* Translators: walk-and-press: name */
N_("Walk and press")
/* Translators: walk-and-press: another name */
N_("Three steps there and back")
/* Translators: walk-and-press: to spare balance, in lower case */
N_("forward steps only, then turn")
/* Translators: walk-and-press: to spare shoulders, in lower case */
N_("press low, at waist height")
/* Translators: walk-and-press: setup */
N_("Stand with three big steps of free floor ahead, hands at your chest.")
/* Translators: walk-and-press: cues 1 */
N_("Three steps forward, pressing ahead")
/* Translators: walk-and-press: cues 2 */
N_("Tap, then three steps back")
/* Translators: walk-and-press: cues 3 */
N_("Draw your hands in going back")
/* Translators: walk-and-press: cues 4 */
N_("Roll through the whole foot")
/* Translators: walk-and-press: fault */
N_("Drifting off line going back? Take shorter steps and look ahead.")
/* Translators: walk-and-press: easier */
N_("On the spot, marching with an easy arm swing.")
/* Translators: walk-and-press: harder */
N_("Bigger steps, dipping your knees at each change.")
/* Translators: walk-out: name */
N_("Walk-out")
/* Translators: walk-out: another name */
N_("Hand walk-out")
/* Translators: walk-out: to spare wrists, in lower case */
N_("hands on a chair seat, short walk")
/* Translators: walk-out: to spare lower-back, in lower case */
N_("knees well bent, halfway out")
/* Translators: walk-out: to spare shoulders, in lower case */
N_("stop halfway out")
/* Translators: walk-out: to spare pressure, in lower case */
N_("come up slowly and pause")
/* Translators: walk-out: setup */
N_("Stand with feet hip-width apart, then bend your knees and bring your hands to the floor.")
/* Translators: walk-out: cues 1 */
N_("Walk the hands forward")
/* Translators: walk-out: cues 2 */
N_("Stop in one straight line")
/* Translators: walk-out: cues 3 */
N_("Walk back, heels heavy")
/* Translators: walk-out: cues 4 */
N_("Stand up tall")
/* Translators: walk-out: fault */
N_("Hips sagging at the far end? Firm your tummy or stop sooner.")
/* Translators: walk-out: easier */
N_("Halfway out, knees bent, then walk back.")
/* Translators: walk-out: harder */
N_("Feet follow, walking in to meet your hands.")
/* Translators: walking-lunge: name */
N_("Walking lunge")
/* Translators: walking-lunge: another name */
N_("Travelling lunge")
/* Translators: walking-lunge: to spare knees, in lower case */
N_("smaller step, half the depth")
/* Translators: walking-lunge: to spare balance, in lower case */
N_("feet together between steps")
/* Translators: walking-lunge: setup */
N_("Stand tall at one end of your space, feet hip-width, hands on your hips.")
/* Translators: walking-lunge: cues 1 */
N_("Long step, sink straight down")
/* Translators: walking-lunge: cues 2 */
N_("Push through the front heel")
/* Translators: walking-lunge: cues 3 */
N_("Bring the back foot straight through")
/* Translators: walking-lunge: cues 4 */
N_("Turn calmly at the end")
/* Translators: walking-lunge: fault */
N_("Swaying from side to side? Pause with feet together between steps.")
/* Translators: walking-lunge: easier */
N_("Stay in place, step back and return.")
/* Translators: walking-lunge: harder */
N_("Jumping, changing legs in the air on the spot.")
/* Translators: wall-push-up: name */
N_("Wall push-up")
/* Translators: wall-push-up: another name */
N_("Wall press-up")
/* Translators: wall-push-up: to spare wrists, in lower case */
N_("on fists, or hands a little lower")
/* Translators: wall-push-up: to spare shoulders, in lower case */
N_("hands a little lower, stand closer")
/* Translators: wall-push-up: setup */
N_("Stand at arm's length from a wall, palms flat on it at chest height.")
/* Translators: wall-push-up: cues 1 */
N_("Lean in as one straight piece")
/* Translators: wall-push-up: cues 2 */
N_("Bring your chest towards the wall")
/* Translators: wall-push-up: cues 3 */
N_("Elbows angled down, not out")
/* Translators: wall-push-up: cues 4 */
N_("Press back to straight arms")
/* Translators: wall-push-up: fault */
N_("Only your head moving? Bring your chest to the wall instead.")
/* Translators: wall-push-up: easier */
N_("Step closer, so you lean less.")
/* Translators: wall-push-up: harder */
N_("Hands lower, on a sturdy chair against a wall.")
/* Translators: wall-sit: name */
N_("Wall sit")
/* Translators: wall-sit: another name */
N_("Wall squat hold")
/* Translators: wall-sit: to spare knees, in lower case */
N_("slide up until your knees feel easy")
/* Translators: wall-sit: to spare pressure, in lower case */
N_("hold briefly, breathe out slowly")
/* Translators: wall-sit: setup */
N_("Lean your back on a wall, feet a long step away, and slide down.")
/* Translators: wall-sit: cues 1 */
N_("Knees above your ankles")
/* Translators: wall-sit: cues 2 */
N_("Whole back against the wall")
/* Translators: wall-sit: cues 3 */
N_("Arms relaxed, hands off your thighs")
/* Translators: wall-sit: cues 4 */
N_("Keep breathing, slow and even")
/* Translators: wall-sit: fault */
N_("Knees ahead of your toes? Walk your feet further forward.")
/* Translators: wall-sit: easier */
N_("Slide higher, knees only slightly bent.")
/* Translators: wall-sit: harder */
N_("Thighs level, knees at a right angle.")
/* Translators: wide-push-up: name */
N_("Wide push-up")
/* Translators: wide-push-up: another name */
N_("Wide press-up")
/* Translators: wide-push-up: to spare wrists, in lower case */
N_("on fists or on dumbbells")
/* Translators: wide-push-up: to spare shoulders, in lower case */
N_("hands closer, lower only halfway")
/* Translators: wide-push-up: to spare lower-back, in lower case */
N_("knees down, tummy firm")
/* Translators: wide-push-up: setup */
N_("Start in a high plank with your hands well wider than your shoulders.")
/* Translators: wide-push-up: cues 1 */
N_("Lower your chest, elbows over wrists")
/* Translators: wide-push-up: cues 2 */
N_("Body straight, tummy firm")
/* Translators: wide-push-up: cues 3 */
N_("Shoulders away from your ears")
/* Translators: wide-push-up: cues 4 */
N_("Push the floor away")
/* Translators: wide-push-up: fault */
N_("Hands too far forward? Keep them level with your chest.")
/* Translators: wide-push-up: easier */
N_("Knees down, hands still wide.")
/* Translators: wide-push-up: harder */
N_("Feet up, on a sturdy chair against a wall.")
/* Translators: wood-chop: name */
N_("Wood chop")
/* Translators: wood-chop: another name */
N_("Woodchopper")
/* Translators: wood-chop: to spare lower-back, in lower case */
N_("light weight, turn from your feet")
/* Translators: wood-chop: to spare shoulders, in lower case */
N_("start at chest height")
/* Translators: wood-chop: setup */
N_("Stand with feet wide, one dumbbell in both hands, held above one shoulder.")
/* Translators: wood-chop: cues 1 */
N_("Sweep down past the opposite knee")
/* Translators: wood-chop: cues 2 */
N_("Hips and back foot turn too")
/* Translators: wood-chop: cues 3 */
N_("Bend your knees as you turn")
/* Translators: wood-chop: cues 4 */
N_("Lift back up with control")
/* Translators: wood-chop: fault */
N_("Bending from your back? Bend your knees and turn from your feet.")
/* Translators: wood-chop: easier */
N_("No weight, hands together, smaller sweep.")
/* Translators: wood-chop: harder */
N_("Slower, with a pause at the bottom.")
/* Translators: wrist-flexor-stretch: name */
N_("Wrist flexor stretch")
/* Translators: wrist-flexor-stretch: another name */
N_("Forearm stretch")
/* Translators: wrist-flexor-stretch: to spare wrists, in lower case */
N_("elbow bent, lighter pull")
/* Translators: wrist-flexor-stretch: to spare knees, in lower case */
N_("standing, or sitting on a chair")
/* Translators: wrist-flexor-stretch: setup */
N_("Kneel tall, one arm straight in front, palm up, fingers held by the other hand.")
/* Translators: wrist-flexor-stretch: cues 1 */
N_("Draw the fingers down and back")
/* Translators: wrist-flexor-stretch: cues 2 */
N_("Elbow straight, not locked")
/* Translators: wrist-flexor-stretch: cues 3 */
N_("Shoulder low")
/* Translators: wrist-flexor-stretch: fault */
N_("Bending only the fingertips? Hold across the palm instead.")
/* Translators: wrist-flexor-stretch: easier */
N_("Elbow slightly bent, with a lighter pull.")
/* Translators: wrist-flexor-stretch: harder */
N_("Thumb as well, drawn gently back with the fingers.")
/* Translators: wrist-rocks: name */
N_("Wrist rocks")
/* Translators: wrist-rocks: to spare wrists, in lower case */
N_("weight well back, tiny rocks")
/* Translators: wrist-rocks: to spare knees, in lower case */
N_("mat folded double under the knees")
/* Translators: wrist-rocks: setup */
N_("Come onto hands and knees, hands under your shoulders, fingers spread.")
/* Translators: wrist-rocks: cues 1 */
N_("Rock gently forward over the hands")
/* Translators: wrist-rocks: cues 2 */
N_("Sit back again to ease")
/* Translators: wrist-rocks: cues 3 */
N_("Palms stay flat")
/* Translators: wrist-rocks: cues 4 */
N_("Elbows straight, not locked")
/* Translators: wrist-rocks: fault */
N_("Too much weight too soon? Keep most of it on the knees.")
/* Translators: wrist-rocks: easier */
N_("Weight well back, and only small rocks.")
/* Translators: wrist-rocks: harder */
N_("Fingers turned out, then rock gently again.")
