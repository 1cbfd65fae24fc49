// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Charts
import Wetfront.Controls
import Wetfront.Theme

// Values of visits over the years, with the table behind them. Fingers pinch and drag, a touch tells the visit that is
// nearest; arrow keys go from visit to visit and from line to line, plus and minus change how many days are seen.
ColumnLayout {
    id: chart

    required property string name     // of what is shown, for those who hear it
    required property string words    // what it says, in a sentence
    required property var shown       // {picture, rows, legend}
    property bool tabled: false

    readonly property bool drawable: shown.picture !== undefined && shown.picture.lines !== undefined

    spacing: Theme.gap

    component Tool: ActionButton {
        property string does
        Accessible.name: Sentence.fill(qsTr("%1: %2"), [chart.name, does])
    }

    HistoryItem {
        id: drawing
        visible: chart.drawable && !chart.tabled
        implicitHeight: Theme.pictureHeight * 1.3
        picture: chart.drawable ? chart.shown.picture : ({})
        font.family: Theme.family
        font.pixelSize: Theme.fontSmall
        lineColor: Theme.ink
        faintColor: Theme.line
        groundColor: Theme.well
        waterColor: Theme.water
        warmColor: Theme.warning
        stroke: Theme.borderStrong
        activeFocusOnTab: true
        Layout.fillWidth: true

        Accessible.role: Accessible.Graphic
        Accessible.name: chart.name
        Accessible.description: told.length > 0 ? told : chart.words
        Accessible.focusable: true

        Keys.onLeftPressed: walk(-1)
        Keys.onRightPressed: walk(1)
        Keys.onUpPressed: walkLines(-1)
        Keys.onDownPressed: walkLines(1)
        Keys.onPressed: event => {
            event.accepted = true;
            if (event.key === Qt.Key_Plus || event.key === Qt.Key_Equal)
                zoomIn();
            else if (event.key === Qt.Key_Minus)
                zoomOut();
            else if (event.key === Qt.Key_0)
                showAll();
            else
                event.accepted = false;
        }

        TapHandler {
            onTapped: point => {
                drawing.forceActiveFocus(Qt.MouseFocusReason);
                drawing.pick(point.position.x, point.position.y);
            }
        }
        DragHandler {
            target: null
            yAxis.enabled: false
            onActiveChanged: if (active)
                drawing.holdView()
            onTranslationChanged: if (active)
                drawing.moveView(0, activeTranslation.x, 1)
        }
        PinchHandler {
            id: pinch
            property real began
            target: null
            onActiveChanged: if (active) {
                began = centroid.position.x;
                drawing.holdView();
            }
            onUpdated: if (active)
                drawing.moveView(began, centroid.position.x, activeScale)
        }
        WheelHandler {
            acceptedModifiers: Qt.ControlModifier
            acceptedDevices: PointerDevice.Mouse | PointerDevice.TouchPad
            onWheel: event => {
                if (event.angleDelta.y > 0)
                    drawing.zoomIn();
                else if (event.angleDelta.y < 0)
                    drawing.zoomOut();
            }
        }
        FocusRing {
            visible: drawing.activeFocus
        }
    }
    PlainWords {
        visible: drawing.visible
        text: drawing.told.length > 0 ? drawing.told : qsTr("Touch a visit, or go along with the arrows.")
        soft: drawing.told.length === 0
        font.bold: drawing.told.length > 0
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Tool {
            visible: drawing.visible
            pictogram: "back"
            does: qsTr("the visit before")
            onClicked: drawing.walk(-1)
        }
        Tool {
            visible: drawing.visible
            pictogram: "forward"
            does: qsTr("the next visit")
            onClicked: drawing.walk(1)
        }
        Tool {
            visible: drawing.visible
            pictogram: "plus"
            does: qsTr("fewer days, wider")
            enabled: drawing.canZoomIn
            onClicked: drawing.zoomIn()
        }
        Tool {
            visible: drawing.visible
            pictogram: "minus"
            does: qsTr("more days")
            enabled: drawing.zoomed
            onClicked: drawing.zoomOut()
        }
        Tool {
            visible: drawing.visible
            text: qsTr("All")
            does: qsTr("all days")
            enabled: drawing.zoomed
            onClicked: drawing.showAll()
        }
        Tool {
            visible: chart.drawable
            pictogram: "list"
            text: chart.tabled ? qsTr("Picture") : qsTr("Table")
            does: chart.tabled ? qsTr("as a picture") : qsTr("as a table")
            onClicked: chart.tabled = !chart.tabled
        }
    }
    HistoryLegend {
        visible: drawing.visible && chart.shown.legend.length > 0
        lines: chart.shown.legend ?? []
        current: drawing.pickedLine
        onChosen: line => drawing.pickLine(line)
        Layout.fillWidth: true
    }
    Repeater {
        model: chart.tabled || !chart.drawable ? chart.shown.rows : []
        delegate: RowLayout {
            id: row
            required property var modelData
            spacing: Theme.space
            Layout.fillWidth: true
            PlainWords {
                text: row.modelData.day
                soft: true
                Layout.alignment: Qt.AlignTop
            }
            PlainWords {
                text: row.modelData.text
                font.bold: row.modelData.event
                Layout.fillWidth: true
            }
        }
    }
}
