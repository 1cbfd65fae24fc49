// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Theme
import Wetfront.Controls

// Every control in every state, on a tablet's glass of 118 dots per inch. All data is invented.
Rectangle {
    id: gallery

    property string mode: "sun"
    property string page: "buttons"
    property real dotsPerInch: 118

    color: Theme.ground

    Binding {
        target: Theme
        property: "mode"
        value: gallery.mode
    }
    Binding {
        target: Theme
        property: "pixelsPerMm"
        value: gallery.dotsPerInch / 25.4
    }
    readonly property bool landscape: width > height

    function openOverlay(): void {
        if (page === "pad")
            pad.ask({
                label: "Pad length",
                text: "118.5",
                unit: "ft",
                units: ["ft", "m"],
                hint: "Along the wall, from the first pad to the last",
                rangeText: "3 to 600 ft",
                negative: true,
                mayBeEmpty: true,
                check: text => text.startsWith("0") ? "0 ft was read; 3 to 600 ft is accepted." : ""
            });
        else if (page === "time")
            pad.ask({
                label: "Pads may run from",
                text: "09:30",
                timeOfDay: true
            });
        else if (page === "reason")
            reason.explain({
                title: "Base on-time",
                explanation: "The pump must run until the water has reached the far end and what dries in one period is replaced.",
                formula: "fill time + 1.25 × period × share that dries + uncertainty",
                inputs: [
                    {
                        name: "Fill time",
                        symbol: "t_fill",
                        value: "45 s",
                        origin: "three readings of today, ± 3 s",
                        source: ""
                    },
                    {
                        name: "Period",
                        symbol: "P",
                        value: "300 s",
                        origin: "chosen",
                        source: "common practice, no source"
                    }
                ],
                result: "85 s",
                rounding: "82.5 s, rounded up to the 5 s steps of this timer",
                source: "invented for this page"
            });
        else if (page === "confirm")
            confirm.ask({
                question: "Give up this reading?",
                detail: "Three marks were taken. They stay in the journal.",
                keepText: "Keep timing",
                doText: "Give it up"
            });
        else if (page === "busy")
            busy.open();
    }
    // An overlay needs a window to open in.
    Timer {
        interval: 0
        running: gallery.Window.window !== null
        onTriggered: gallery.openOverlay()
    }

    TopLine {
        id: top
        width: parent.width
        backVisible: true
        text: "Start the pump, then press when the water has reached the far end."
        pumpOffText: "Pump off: 12:30 left"
        pumpOffUrgent: gallery.page === "boxes"
    }
    StepTabs {
        id: steps
        anchors.top: top.bottom
        width: vertical ? implicitWidth : parent.width
        height: vertical ? parent.height - top.height : implicitHeight
        vertical: gallery.landscape
        onChosen: index => current = index
        current: 2
        model: ListModel {
            ListElement {
                title: "Safety"
                complete: true
                problem: ""
            }
            ListElement {
                title: "House and banks"
                complete: true
                problem: ""
            }
            ListElement {
                title: "Time the water"
                complete: false
                problem: "Bank 2 has no reading"
            }
            ListElement {
                title: "Conditions"
                complete: false
                problem: ""
            }
            ListElement {
                title: "Settings found"
                complete: false
                problem: ""
            }
            ListElement {
                title: "Advice"
                complete: false
                problem: ""
            }
            ListElement {
                title: "Settings left"
                complete: false
                problem: ""
            }
            ListElement {
                title: "Before leaving"
                complete: false
                problem: ""
            }
            ListElement {
                title: "Sheet"
                complete: false
                problem: ""
            }
        }
    }
    Item {
        id: body
        x: gallery.landscape ? steps.width : 0
        y: gallery.landscape ? top.height : steps.y + steps.height
        width: parent.width - x
        height: parent.height - y
        GalleryButtons {
            anchors.fill: parent
            visible: !fields.visible && !boxes.visible
        }
        GalleryFields {
            id: fields
            anchors.fill: parent
            visible: gallery.page === "fields"
            onPadAsked: pad.ask({
                label: "Header length",
                text: "120",
                unit: "ft"
            })
        }
        GalleryBoxes {
            id: boxes
            anchors.fill: parent
            visible: gallery.page === "boxes"
        }
    }

    NumberPad {
        id: pad
    }
    ReasonSheet {
        id: reason
    }
    ConfirmPanel {
        id: confirm
    }
    BusyPanel {
        id: busy
        text: "Writing the sheet"
        progress: 0.4
    }
}
