// Reads a DXF file with dxflib and prints what it understood as JSON. Build: g++ -o read_dxflib read_dxflib.cpp -ldxflib

#include <dxflib/dl_creationadapter.h>
#include <dxflib/dl_dxf.h>

#include <cstdio>
#include <map>
#include <string>
#include <vector>

namespace {

struct Path {
    std::string layer;
    bool closed;
    std::vector<DL_VertexData> vertices;
};

std::string number(double value) {
    char text[64];
    std::snprintf(text, sizeof text, "%.15g", value);
    return text;
}

// Shapes are printed in the order in which they are met, as text that is already JSON.
class Reader : public DL_CreationAdapter {
public:
    std::vector<std::string> shapes;
    std::vector<std::string> layers;
    std::map<std::string, std::string> variables;

    void addLayer(const DL_LayerData& data) override { layers.push_back("\"" + data.name + "\""); }

    void setVariableString(const std::string& key, const std::string& value, int) override { variables[key] = "\"" + value + "\""; }

    void setVariableInt(const std::string& key, int value, int) override { variables[key] = std::to_string(value); }

    void addCircle(const DL_CircleData& data) override {
        shapes.push_back("{\"type\":\"circle\",\"layer\":\"" + attributes.getLayer() + "\",\"closed\":true,\"vertices\":[["
            + number(data.cx) + "," + number(data.cy) + "," + number(data.radius) + "]]}");
    }

    void addPolyline(const DL_PolylineData& data) override {
        finish();
        path = Path{attributes.getLayer(), (data.flags & 1) != 0, {}};
        isOpen = true;
    }

    void addVertex(const DL_VertexData& data) override { path.vertices.push_back(data); }

    void endEntity() override { finish(); }

    void addLine(const DL_LineData&) override { other("line"); }

    void addArc(const DL_ArcData&) override { other("arc"); }

    void finish() {
        if (!isOpen) {
            return;
        }
        std::string text = "{\"type\":\"path\",\"layer\":\"" + path.layer + "\",\"closed\":" + (path.closed ? "true" : "false") + ",\"vertices\":[";
        for (std::size_t i = 0; i < path.vertices.size(); i++) {
            const DL_VertexData& v = path.vertices[i];
            text += (i ? ",[" : "[") + number(v.x) + "," + number(v.y) + "," + number(v.bulge) + "]";
        }
        shapes.push_back(text + "]}");
        isOpen = false;
    }

private:
    Path path;
    bool isOpen = false;

    void other(const std::string& type) { shapes.push_back("{\"type\":\"" + type + "\",\"layer\":\"" + attributes.getLayer() + "\",\"closed\":false,\"vertices\":[]}"); }
};

std::string joined(const std::vector<std::string>& texts) {
    std::string all;
    for (const std::string& text : texts) {
        all += (all.empty() ? "" : ",") + text;
    }
    return all;
}

}  // namespace

int main(int, char** arguments) {
    Reader reader;
    DL_Dxf dxf;
    if (!dxf.in(arguments[1], &reader)) {
        std::fprintf(stderr, "dxflib cannot open %s\n", arguments[1]);
        return 1;
    }
    reader.finish();
    std::vector<std::string> variables;
    for (const auto& [key, value] : reader.variables) {
        variables.push_back("\"" + key + "\":" + value);
    }
    std::printf("{\"variables\":{%s},\"layers\":[%s],\"shapes\":[%s]}\n", joined(variables).c_str(), joined(reader.layers).c_str(), joined(reader.shapes).c_str());
}
